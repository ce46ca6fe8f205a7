import { csvParse } from 'd3-dsv'
import { describe, expect, it } from 'vitest'
import { csvText } from '../../../src/render/tables/csv.ts'

const table = (...cells: string[]) => ({
  id: 'a',
  title: 'A',
  heads: ['What'],
  rows: cells.map((c) => [c]),
})

describe('a table as text', () => {
  it('is read back by another program, with commas, quotes and lines', () => {
    const cells = ['a, b', 'say "stop"', 'two\nlines', '½ in']
    const back = csvParse(csvText(table(...cells)).slice(1))
    expect(back.map((row) => row['What'])).toEqual(cells)
  })

  // OWASP, CSV Injection: cells that begin with =, +, -, @, tab or carriage return.
  it.each(['=1+1', '+1', '-1', '@a', '\tx'])('makes no formula of %j', (cell) => {
    const back = csvParse(csvText(table(cell)).slice(1))
    expect(back[0]?.['What']).toBe(`'${cell}`)
  })

  it('leaves numbers alone', () => {
    expect(csvText({ ...table(), rows: [[-1.5], [null]] })).toBe('\ufeffWhat\r\n-1.5\r\n\r\n')
  })
})
