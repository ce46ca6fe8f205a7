import { describe, expect, it } from 'vitest'
import { fittingTables } from '../../../src/edit/readings/fitting.ts'

const head = 'station (ft),offset (ft),depth (in),date\n'
const rows = (...places: readonly (readonly [number, number])[]): string =>
  places.map(([s, o]) => `${s},${o},1 1/2,2027-05-15\n`).join('')
const whole = rows([0, 5], [0, 30], [330, 5], [330, 30], [660, 5], [660, 30])

const fitting = (text: string) =>
  fittingTables(new Map([['depths.csv', text]]), 'us').get('depths.csv')

describe('a table that is being typed', () => {
  it('is as it is where all of it counts', () => {
    expect(fitting(head + whole)).toBe(head + whole)
  })

  it('goes on without a station that has one reading yet; all lines keep their numbers', () => {
    const made = fitting(head + whole + rows([990, 5]))
    expect(made).toBe(`${head}${whole}\n`)
  })

  it('goes on without a day that has too few, and hides nothing where there is no other', () => {
    const late = rows([0, 5]).replace('05-15', '06-12')
    expect(fitting(head + whole + late)).toBe(`${head}${whole}\n`)
    expect(fitting(head + late)).toBe(head + late)
  })

  it('is left alone where it is no such table', () => {
    expect(fitting('anything')).toBe('anything')
  })
})
