import { describe, expect, it } from 'vitest'
import { readSurvey } from '../../../src/validate/imports/surveys.ts'

const at = { file: 'facility.yaml', line: 1, column: 1, length: 1 }

const entry = { of: 'cushion-depth', file: 'depths.csv', by: 'D. O.' } as const
const check = (text: string) => readSurvey({ path: 'depths.csv', text }, entry, at)

const good = [
  'station (ft),offset (ft),depth (in),date',
  '0,5,1 1/2,2027-06-12',
  '0,30,1,2027-06-12',
  '330,5,1.25,2027-06-12',
  '330,30 ft,25 mm,2027-06-12',
  '660,5,1,2027-06-12',
  '660,30,1,2027-06-12',
]

describe('a survey table', () => {
  it('becomes readings in meters by day, with units from the head or from the cell', () => {
    const { value, problems } = check(
      [
        'Depth (in),station (ft),offset (ft),date',
        '1 1/2,330,5,2027-06-12',
        ...good
          .slice(1)
          .map((l) => l.split(','))
          .map(([s, o, d, t]) => [d, s, o, t].join(','))
          .filter((l) => !l.startsWith('1.25')),
        '2,0,5,2027-05-01',
        '2,0,30,2027-05-01',
        '2,330,5,2027-05-01',
        '2,330,30,2027-05-01',
        '2,660,5,2027-05-01',
        '2,660,30,2027-05-01',
      ].join('\n'),
    )
    expect(problems).toEqual([])
    expect(value?.days.map((d) => [d.date, d.readings.length])).toEqual([
      ['2027-05-01', 6],
      ['2027-06-12', 6],
    ])
    const latest = value?.days[1]?.readings ?? []
    expect(latest.map((r) => [r.station, r.offset])).toEqual(
      [...latest]
        .sort((a, b) => a.station - b.station || a.offset - b.offset)
        .map((r) => [r.station, r.offset]),
    )
    expect(latest[3]).toMatchObject({ value: 0.025 })
    expect(latest[0]?.value).toBeCloseTo(0.0381, 9)
  })

  it.each<[string, (lines: string[]) => string[], { code: string; line: number; column?: number }]>(
    [
      [
        'a column that is not known',
        (l) => ['station (ft),offset (ft),deph (in),date', ...l.slice(1)],
        { code: 'schema/unknown-key', line: 1, column: 26 },
      ],
      [
        'a value without a unit',
        (l) => ['station (ft),offset (ft),depth,date', ...l.slice(1)],
        { code: 'quantity/no-unit', line: 2 },
      ],
      [
        'a depth that cannot be true',
        (l) => [...l.slice(0, 3), '330,5,40,2027-06-12', ...l.slice(4)],
        { code: 'quantity/range', line: 4, column: 7 },
      ],
      [
        'a unit of another kind',
        (l) => [...l.slice(0, 3), '330,5,1 gal,2027-06-12', ...l.slice(4)],
        { code: 'quantity/dimension', line: 4 },
      ],
      [
        'a day that does not exist',
        (l) => [...l.slice(0, 5), '660,5,1,2027-02-30', l[6] ?? ''],
        { code: 'schema/format', line: 6 },
      ],
      [
        'a place read twice',
        (l) => [...l, '660,30,1,2027-06-12'],
        { code: 'ref/duplicate-id', line: 8 },
      ],
      ['too few readings', (l) => l.slice(0, 5), { code: 'schema/missing', line: 2 }],
    ],
  )('is refused with %s', (_, edit, { code, line, column }) => {
    const { value, problems } = check(edit([...good]).join('\n'))
    expect(value).toBeUndefined()
    expect(problems[0]).toMatchObject({
      code,
      place: { line, ...(column === undefined ? {} : { column }) },
    })
  })

  it('reports all faults at once', () => {
    expect(check([...good.slice(0, 3), '99999,5,40,never'].join('\n')).problems).toHaveLength(3)
  })
})
