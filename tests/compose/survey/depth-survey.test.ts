import { describe, expect, it } from 'vitest'
import { composeCushionMap } from '../../../src/compose/survey/cushion-map.ts'
import {
  stretchesOf,
  surveyDayRows,
  surveyMoveRows,
  surveyStationRows,
} from '../../../src/compose/survey/depth-survey.ts'
import type { Reading, SurveyDay } from '../../../src/model/survey.ts'
import type { Survey } from '../../../src/validate/imports/survey-table.ts'
import { contextFor, halfMile } from '../support/context.ts'

const inch = 0.0254

const survey = (days: readonly SurveyDay[]): Survey => ({
  of: 'cushion-depth',
  by: 'D. O.',
  at: { file: 'facility.yaml', line: 1, column: 1, length: 1 },
  days,
  file: { path: 'depths.csv', text: '' },
  rows: [],
})

/** Four stations around the rail, each with the same depth all across. */
const readings = (...depths: readonly number[]): readonly Reading[] =>
  depths.flatMap((inches, i) =>
    [2, 10, 18].map((offset) => ({ station: i * 200, offset, value: inches * inch })),
  )

const two = halfMile.replace(
  'material: stone-dust',
  'material: stone-dust, depth: { target: 2 in, tolerance: 1/4 in }',
)
const contextOf = (...days: readonly SurveyDay[]) => contextFor(two, { surveys: [survey(days)] })

describe('the depth survey', () => {
  it('has a row for each day, oldest first, with how much lay within what is wanted', async () => {
    const rows = surveyDayRows(
      await contextOf(
        { date: '2027-06-01', readings: readings(2, 2, 2, 3) },
        { date: '2027-05-01', readings: readings(1, 1, 1, 1) },
      ),
    )
    expect(rows).toEqual([
      ['Sat, May 1, 2027', '12', '1 in', '1 in', '1 in', '0 %'],
      ['Tue, Jun 1, 2027', '12', '2 1/4 in', '2 in', '3 in', '75 %'],
    ])
  })

  it('moves what is too much at one station to where it is missing, by the shorter way', async () => {
    const context = await contextOf({ date: '2027-06-01', readings: readings(3, 2, 2, 1) })
    const [move, ...others] = surveyMoveRows(context)
    // Stations 0 and 600 m of a rail of 799 m lie 199 m apart: 650 ft, printed to ten feet.
    expect([move?.[0], move?.[1], move?.[3]]).toEqual(['0 ft', '1,970 ft', '650 ft'])
    expect(others.every((row) => row.includes('stockpile'))).toBe(true)
  })

  it('balances the track: every stretch is over or short by its own area', async () => {
    const stretches = stretchesOf(
      await contextOf({ date: '2027-06-01', readings: readings(3, 2, 2, 1) }),
    )
    expect(stretches.map((s) => [s.over > 0, s.short > 0])).toEqual([
      [true, false],
      [false, false],
      [false, false],
      [false, true],
    ])
  })

  it('moves nothing that lies within what is wanted, and says loads of the truck here', async () => {
    const off = (...eighths: readonly number[]) => readings(...eighths.map((e) => 2 + e / 8))
    const none = composeCushionMap(
      await contextOf({ date: '2027-06-01', readings: off(2, -2, 1, -1) }),
    )
    expect([none?.moves, none?.spare, none?.missing]).toEqual([[], undefined, undefined])
    const some = composeCushionMap(
      await contextOf({ date: '2027-06-01', readings: off(8, 2, 0, -4) }),
    )
    expect(some?.moves.map((m) => [m.names.from, m.names.to])).toEqual([['0 ft', '1,970 ft']])
    // Half a mile of 60 ft or so, a quarter of it ½ in too thin: 100 tons, by truck.
    expect(some?.moves[0]?.loads).toBeGreaterThan(3)
    expect(some?.spare?.loads).toBeGreaterThan(some?.moves[0]?.loads ?? 0)
  })

  it('counts what is brought in the loads of the quarry, as the order does', async () => {
    const hauls = `${two}equipment: [{ id: t, name: t, can: [haul], from: own, bed: 5 tons }]\n`
    const day = { date: '2027-06-01', readings: readings(1, 1.5, 1.625, 1.25) }
    const context = await contextFor(hauls, { surveys: [survey([day])] })
    const missing = composeCushionMap(context)?.missing
    // 20 tons on a delivery truck and 5 on the one here: the map counted trips of its own.
    expect(missing?.loads).toBe(context.engine.si('hard.loads'))
    expect(missing?.mass).toBe(context.engine.text('hard.mass'))
  })

  it('is drawn as a map of the latest day, a cell for each reading', async () => {
    const context = await contextOf(
      { date: '2027-05-01', readings: readings(1, 1, 1, 1) },
      { date: '2027-06-01', readings: readings(3, 2, 2, 1) },
    )
    const map = composeCushionMap(context)
    expect(map?.day).toMatch(/Jun 1, 2027$/)
    expect(map?.target).toBeCloseTo(2 * inch, 9)
    expect(map?.cells.map((c) => c.text).slice(0, 3)).toEqual(['3 in', '3 in', '3 in'])
    expect(map?.cells).toHaveLength(12)
    expect(surveyStationRows(context)).toHaveLength(4)
  })

  it('is nothing at all where nobody has surveyed', async () => {
    const context = await contextFor(two)
    expect(composeCushionMap(context)).toBeUndefined()
    expect([surveyDayRows, surveyStationRows, surveyMoveRows].flatMap((r) => r(context))).toEqual(
      [],
    )
  })
})
