import { describe, expect, it } from 'vitest'
import { readSurvey } from '../../../src/validate/imports/survey-table.ts'
import { badTables, placesOf } from '../../support/bad-input.ts'

const context = {
  at: { file: 'facility.yaml', line: 1, column: 1, length: 1 },
  date: '2027-06-14',
}

const entry = { of: 'cushion-depth', file: 'depths.csv', by: 'D. O.' } as const
const check = (text: string) => readSurvey({ path: 'depths.csv', text }, entry, context)

const { start, cases } = await badTables('cushion-depth')
const good = start.trimEnd().split('\n')

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

  it.each(cases.map((c) => [c.name, c] as const))(
    'is refused with %s',
    (_, { text, expect: places }) => {
      const { value, problems } = check(text)
      expect(value).toBeUndefined()
      expect(placesOf(problems)).toEqual([...places].sort())
    },
  )
})

describe('a table of levels', async () => {
  const levels = await badTables('surface-level')
  const read = (text: string) =>
    readSurvey({ path: 'levels.csv', text }, { ...entry, of: 'surface-level' }, context)

  it.each(levels.cases.map((c) => [c.name, c] as const))(
    'is refused with %s',
    (_, { text, expect: places }) => {
      const { value, problems } = read(text)
      expect(value).toBeUndefined()
      expect(placesOf(problems)).toEqual([...places].sort())
    },
  )

  it('may hold what a staff reads, and then says the same of the surface', () => {
    const [head = '', ...lines] = levels.start.trimEnd().split('\n')
    const staff = [
      head.replace('level', 'staff reading'),
      ...lines.map((l) => l.replace(/,(\d+\.\d+),/, (_, h) => `,${(110 - Number(h)).toFixed(2)},`)),
    ]
    const rises = (text: string): readonly number[] => {
      const { value, problems } = read(text)
      expect(problems).toEqual([])
      const readings = value?.days[0]?.readings ?? []
      return readings.map((r) => r.value - (readings[0]?.value ?? 0))
    }
    const heights = rises(levels.start)
    rises(staff.join('\n')).forEach((rise, i) => expect(rise).toBeCloseTo(heights[i] ?? 0, 9))
  })

  it('with numbers that have no unit is told once for each column, with the head to write', () => {
    const bare = 'station,offset,depth (in),date\n0,5,1,2027-06-12\n0,30,1,2027-06-12\n'
    const { problems } = check(bare)
    expect(problems.map((p) => [p.place.line, p.place.column, p.hint])).toEqual([
      [2, 1, 'write the unit of the whole column in its head: station (ft)'],
      [2, 3, 'write the unit of the whole column in its head: offset (ft)'],
    ])
  })
})
