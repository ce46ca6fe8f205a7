import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { besideEachOther } from '../../../src/compose/schedules/beside.ts'
import type { ManualTable } from '../../../src/model/manual/schedule.ts'

const table = (days: string | undefined, rows: ManualTable['rows']): ManualTable => ({
  id: `clock-${days}`,
  title: `The day: ${days}`,
  about: undefined,
  days,
  heads: ['At', 'What'],
  rows,
  estimate: false,
})

describe('tables of several days beside each other', () => {
  it('say once what all days have in common, with a column of times for each', () => {
    const [one, ...others] = besideEachOther([
      table('Tue', [
        ['6:00', 'walk'],
        ['13:00', 'first race'],
        ['18:00', 'pull back'],
      ]),
      table('Fri', [
        ['11:00', 'walk'],
        ['12:00', 'lights'],
        ['19:00', 'first race'],
      ]),
    ])
    expect(others).toEqual([])
    expect(one?.title).toBe('The day')
    expect(one?.heads).toEqual(['Tue', 'Fri', 'What'])
    expect(one?.rows).toEqual([
      ['6:00', '11:00', 'walk'],
      ['–', '12:00', 'lights'],
      ['13:00', '19:00', 'first race'],
      ['18:00', '–', 'pull back'],
    ])
  })

  it('leave a single table and tables that are not of days as they are', () => {
    const single = [table('Tue', [['6:00', 'walk']])]
    expect(besideEachOther(single)).toBe(single)
    const plain = [table(undefined, [['a', 'b']]), table(undefined, [['c', 'd']])]
    expect(besideEachOther(plain)).toBe(plain)
  })

  it('lose no row of any day and keep the order of each', () => {
    const day = fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'), { minLength: 1 })
    fc.assert(
      fc.property(fc.array(day, { minLength: 2, maxLength: 4 }), (days) => {
        const tables = days.map((rows, i) =>
          table(
            String(i),
            rows.map((r, at) => [`${i}:${at}`, r]),
          ),
        )
        const [one] = besideEachOther(tables)
        for (const [i, rows] of days.entries()) {
          const own = (one?.rows ?? []).filter((row) => row[i] !== '–')
          expect(own.map((row) => row.at(-1))).toEqual(rows)
          expect(own.map((row) => row[i])).toEqual(rows.map((_, at) => `${i}:${at}`))
        }
      }),
    )
  })
})
