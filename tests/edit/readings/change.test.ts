import { readFileSync } from 'node:fs'
import path from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { withDay, withPlace, withReading } from '../../../src/edit/readings/change.ts'
import {
  emptyTable,
  isSameSpot,
  type ReadingTable,
  readingTable,
  type Spot,
} from '../../../src/edit/readings/table.ts'
import { foot, inch } from '../../../src/model/quantity/units.ts'
import { readSurvey } from '../../../src/validate/imports/survey-table.ts'
import { demoFolder } from '../../support/demo.ts'

const text = readFileSync(path.join(demoFolder('larkmoor'), 'depths.csv'), 'utf8')
const read = (of: string): ReadingTable => {
  const table = readingTable(of, 'us')
  if (!table) throw new Error(`no table: ${of}`)
  return table
}
const at = (station: number, offset: number, date = '2027-05-15'): Spot => ({
  date,
  station: station * foot,
  offset: offset * foot,
})

/** What the reader of the folder finds, m. */
const found = (of: string) =>
  readSurvey(
    { path: 'depths.csv', text: of },
    { of: 'cushion-depth', by: 'A. Name' },
    { at: { file: '', line: 1, column: 1, length: 1 }, date: '2027-06-15', units: 'us' },
  )

describe('a reading', () => {
  it('is changed in its own line alone, as it was typed', () => {
    const made = withReading(read(text), at(330, 32), '1 5/8 in')
    expect(made).toBe(text.replace('330,32,1 1/2,2027-05-15', '330,32,1 5/8,2027-05-15'))
    expect(made).not.toBe(text)
    expect(withReading(read(text), at(330, 32), '40 mm')).toContain('330,32,40 mm,2027-05-15')
    expect(withReading(read(text), at(0, 5), '1 3/8 in')).toBe(text)
  })

  it('is added where it belongs, and taken out with its line', () => {
    const added = withReading(read(text), at(330, 20), '1 1/2 in')
    const lines = added.split('\n')
    expect(lines[lines.indexOf('330,20,1 1/2,2027-05-15') - 1]).toMatch(/^330,5,/)
    expect(withReading(read(added), at(330, 20), undefined)).toBe(text)
    const first = withReading(read(text), at(0, 2), '2')
    expect(first.split('\n')[2]).toBe('0,2,2,2027-05-15')
    const later = withReading(read(text), at(0, 5, '2027-06-20'), '2')
    expect(later).toBe(`${text}0,5,2,2027-06-20\n`)
  })

  it('keeps the ends of lines, and what else stands in a row', () => {
    const plain = '# ours\r\nstation (ft);offset (ft);depth (in);date\r\n0;5;1;2027-05-15'
    const made = withReading(read(plain), at(330, 5), '1 in')
    expect(made).toBe(`${plain}\r\n330;5;1;2027-05-15\r\n`)
    expect(withReading(read(made), at(0, 5), '2 in')).toBe(made.replace('0;5;1;', '0;5;2;'))
  })

  it('says what the reader of the folder finds, whatever is typed where', () => {
    const place = fc.record({
      station: fc.constantFrom(0, 100, 200.5, 330, 2000),
      offset: fc.constantFrom(1, 5, 32, 47.25, 60),
      // Sixteenths of an inch, near the others.
      depth: fc.option(fc.integer({ min: 17, max: 31 }), { nil: undefined }),
    })
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 12 }), (typed) => {
        let made = text
        for (const { station, offset, depth } of typed)
          made = withReading(
            read(made),
            at(station, offset),
            depth === undefined ? undefined : `${Math.floor(depth / 16)} ${depth % 16 || 16}/16 in`,
          )
        const day = read(made).readings.filter(({ date }) => date === '2027-05-15')
        const rows = found(made).value?.rows.filter(({ date }) => date === '2027-05-15') ?? []
        if (rows.length === 0) return
        expect(day).toHaveLength(rows.length)
        const last = new Map(typed.map((t) => [`${t.station} ${t.offset}`, t]))
        for (const { station, offset, depth } of last.values()) {
          const row = rows.find((r) => isSameSpot(r, at(station, offset)))
          const whole =
            depth === undefined ? undefined : Math.floor(depth / 16) + (depth % 16 || 16) / 16
          expect(row?.value).toEqual(
            whole === undefined ? undefined : expect.closeTo(whole * inch, 9),
          )
        }
        // What nobody has typed at stands as it stood.
        const own = (line: string): boolean =>
          ![...last.keys()].some((key) => line.startsWith(`${key.replace(' ', ',')},`))
        expect(made.split('\n').filter(own)).toEqual(text.split('\n').filter(own))
      }),
      { numRuns: 25 },
    )
  })
})

describe('places and days', () => {
  it('move with all readings that were taken there', () => {
    const made = withPlace(read(text), '2027-05-15', {
      column: 'station',
      from: 330 * foot,
      to: 331.5 * foot,
    })
    expect(made.match(/^331\.5,/gm)).toHaveLength(3)
    expect(made.match(/^330,.*2027-05-15$/gm)).toBeNull()
    expect(made.match(/^330,.*2027-06-12$/gm)).toHaveLength(3)
  })

  it('change alone', () => {
    const made = withDay(read(text), '2027-05-15', '2027-05-16')
    expect(made).toBe(text.replaceAll('2027-05-15', '2027-05-16'))
  })

  it('begin with nothing', () => {
    const made = withReading(read(emptyTable('depth', 'us')), at(0, 5), '1 1/2 in')
    expect(made).toBe('station (ft),offset (ft),depth (in),date\n0,5,1 1/2,2027-05-15\n')
  })
})
