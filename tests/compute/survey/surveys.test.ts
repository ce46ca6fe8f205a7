import fc from 'fast-check'
import * as statistics from 'simple-statistics'
import { describe, expect, it } from 'vitest'
import { trackArea } from '../../../src/compute/oval/track-area.ts'
import { lengthAt, railOf } from '../../../src/compute/survey/along.ts'
import { depthBalance } from '../../../src/compute/survey/depth-balance.ts'
import { depthSurvey } from '../../../src/compute/survey/depth-survey.ts'
import { levelLine } from '../../../src/compute/survey/level-line.ts'
import { levelSurvey } from '../../../src/compute/survey/level-survey.ts'
import { materialMoves } from '../../../src/compute/survey/material-moves.ts'
import { sectionParts } from '../../../src/compute/survey/station-section.ts'
import { surveyCells } from '../../../src/compute/survey/survey-cells.ts'
import type { SurveyDay } from '../../../src/model/survey.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, inches, ovals } from '../support/realistic.ts'

const width = 20
const track = { straight: 180, radius: 69, widthStraights: width, widthTurns: width }

/** A survey on even stations and three lines, with any depths. */
const surveys = fc
  .record({
    oval: ovals,
    stations: fc.integer({ min: 3, max: 16 }),
    depths: fc.array(inches(0, 4), { minLength: 48, maxLength: 48 }),
  })
  .map(({ oval, stations, depths }) => {
    const readings = Array.from({ length: stations }, (_, i) =>
      [0.1, 0.5, 0.9].map((share, j) => ({
        station: (i * railOf(oval)) / stations,
        offset: share * oval.widthTurns,
        value: depths[3 * i + j] ?? 0,
      })),
    ).flat()
    return { oval, day: { date: '2027-06-12', readings } satisfies SurveyDay }
  })

const level = (
  slope: number,
  bump: (station: number, offset: number) => number = () => 0,
): SurveyDay => ({
  date: '2027-05-08',
  readings: [40, 90, 140, 230, 290, 350, 440, 500, 560, 640, 700, 760].flatMap((station) =>
    [1, 7, 13, 19].map((offset) => ({
      station,
      offset,
      value: 100 + slope * offset + bump(station, offset),
    })),
  ),
})

describe('ground along the oval', () => {
  it('adds up over any stations to the lap at that offset', () => {
    fc.assert(
      fc.property(
        ovals,
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.array(fc.double({ min: 0, max: 0.999, noNaN: true }), { minLength: 2, maxLength: 6 }),
        (oval, offset, shares) => {
          const stops = [...new Set(shares)].sort((a, b) => a - b).map((s) => s * railOf(oval))
          const sum = stops.reduce(
            (total, from, i) =>
              total + lengthAt(oval, from, stops[i + 1] ?? (stops[0] ?? 0) + railOf(oval), offset),
            0,
          )
          expect(sum).toBeCloseTo(2 * oval.straight + 2 * Math.PI * (oval.radius + offset), 6)
        },
      ),
      FEW,
    )
  })
})

describe('a depth survey', () => {
  it('shares the whole track out among its readings', () => {
    fc.assert(
      fc.property(surveys, ({ oval, day }) => {
        const area = surveyCells(day.readings, oval).reduce((sum, c) => sum + c.area, 0)
        expect(area).toBeCloseTo(numberOf(trackArea.compute(oval).total), 4)
      }),
      FEW,
    )
  })

  // Second opinion: simple-statistics (ISC).
  it('has the mean and spread that a statistics library finds', () => {
    fc.assert(
      fc.property(surveys, ({ day }) => {
        const depths = day.readings.map((r) => r.value)
        const found = depthSurvey(day).compute({ target: 0.03, tolerance: 0.006 })
        expect(found.mean).toBeCloseTo(statistics.mean(depths), 12)
        expect(found.spread).toBeCloseTo(statistics.sampleStandardDeviation(depths), 12)
      }),
      FEW,
    )
  })

  it('has no share outside 0 and 1, and a larger share with a larger tolerance', () => {
    fc.assert(
      fc.property(surveys, inches(0, 1), inches(0, 1), ({ day }, a, b) => {
        const share = (tolerance: number): number =>
          numberOf(depthSurvey(day).compute({ target: 0.03, tolerance }).share)
        expect(share(a)).toBeGreaterThanOrEqual(0)
        expect(share(a + b)).toBeLessThanOrEqual(1)
        expect(share(a + b)).toBeGreaterThanOrEqual(share(a))
      }),
      FEW,
    )
  })

  it('finds as much above as below when the target is the mean by area, and the same both ways where the depth is even', () => {
    fc.assert(
      fc.property(surveys, inches(1, 3), ({ oval, day }, target) => {
        const even = depthBalance({
          ...day,
          readings: day.readings.map((r) => ({ ...r, value: target + 0.01 })),
        }).compute({ ...oval, target, unitWeight: 1600 })
        expect(even.over).toBeCloseTo(0.01 * numberOf(trackArea.compute(oval).total), 4)
        expect(even.overByEnds).toBeCloseTo(numberOf(even.over), 4)
        expect(even.short).toBe(0)
        const cells = surveyCells(day.readings, oval)
        const mean =
          cells.reduce((sum, c) => sum + c.area * c.value, 0) /
          cells.reduce((sum, c) => sum + c.area, 0)
        const balanced = depthBalance(day).compute({ ...oval, target: mean, unitWeight: 1600 })
        expect(balanced.over).toBeCloseTo(numberOf(balanced.short), 6)
      }),
      FEW,
    )
  })
})

describe('a section across the track', () => {
  it('splits where it crosses what is wanted: 20 m from 2 cm too low to 2 cm too high is 0.1 m² either way', () => {
    const { over, short } = sectionParts(
      [
        { station: 0, offset: 0, value: 0.02 },
        { station: 0, offset: 20, value: 0.06 },
      ],
      () => 0.04,
      20,
    )
    expect(over).toBeCloseTo(0.1, 12)
    expect(short).toBeCloseTo(0.1, 12)
  })
})

describe('moving material', () => {
  it('leaves nothing unaccounted for, and never moves from a place that has too little', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 2, maxLength: 12 }),
        (tons) => {
          const balances = tons.map((excess, i) => ({ station: i * 60, excess }))
          const moves = materialMoves(balances, tons.length * 60, 0)
          for (const { station, excess } of balances) {
            const out = moves
              .filter((m) => m.from === station)
              .reduce((sum, m) => sum + m.amount, 0)
            const into = moves.filter((m) => m.to === station).reduce((sum, m) => sum + m.amount, 0)
            expect(out).toBe(Math.max(0, excess))
            expect(into).toBe(Math.max(0, -excess))
          }
          expect(moves.every((m) => m.distance <= (tons.length * 60) / 2)).toBe(true)
        },
      ),
      FEW,
    )
  })

  it('goes the short way around, across the start of the home straight', () => {
    expect(
      materialMoves(
        [
          { station: 10, excess: 5 },
          { station: 790, excess: -5 },
        ],
        800,
        0,
      ),
    ).toEqual([{ from: 10, to: 790, amount: 5, distance: 20 }])
  })
})

describe('a level survey', () => {
  // Second opinion: simple-statistics (ISC).
  it('fits the line that a statistics library fits', () => {
    const readings = [1, 7, 13, 19].map((offset, i) => ({
      station: 0,
      offset,
      value: [100.02, 100.11, 100.4, 100.5][i] ?? 0,
    }))
    expect(levelLine(readings).slope).toBeCloseTo(
      statistics.linearRegression(readings.map((r) => [r.offset, r.value])).m,
      12,
    )
    expect(() => levelLine([{ station: 0, offset: 1, value: 1 }])).toThrow(RangeError)
  })

  const inputs = { ...track, unitWeight: 1600, wantedStraights: 0.025, wantedTurns: 0.06 }

  it('finds the cross-fall of an even surface, and nothing to move where it is the wanted one', () => {
    const found = levelSurvey(level(0.04)).compute({
      ...inputs,
      wantedStraights: 0.04,
      wantedTurns: 0.04,
    })
    expect(numberOf(found.straights)).toBeCloseTo(0.04, 9)
    expect(numberOf(found.turns)).toBeCloseTo(0.04, 9)
    expect(found.worst).toBeCloseTo(0, 9)
    expect(found.volume).toBeCloseTo(0, 6)
  })

  it('moves half of the wedge between the slope found and the one wanted', () => {
    // A slope off by δ over width W stands δW/4 high on average over half the width: δW²/8 of
    // section.
    const found = levelSurvey(level(0.03)).compute({
      ...inputs,
      wantedStraights: 0.025,
      wantedTurns: 0.025,
    })
    const section = (0.005 * width ** 2) / 8
    expect(
      numberOf(found.volume) / (section * (2 * 180 + 2 * Math.PI * (69 + width / 2))),
    ).toBeGreaterThan(0.9)
    expect(
      numberOf(found.volume) / (section * (2 * 180 + 2 * Math.PI * (69 + width / 2))),
    ).toBeLessThan(1.1)
  })

  it('sees a ridge at the rail as the largest bump', () => {
    expect(
      numberOf(
        levelSurvey(level(0.025, (_, offset) => (offset < 2 ? 0.05 : 0))).compute(inputs).worst,
      ),
    ).toBeGreaterThan(0.01)
  })
})
