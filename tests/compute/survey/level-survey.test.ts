import { describe, expect, it } from 'vitest'
import { levelSurvey } from '../../../src/compute/survey/level-survey.ts'
import type { SurveyDay } from '../../../src/model/survey.ts'
import { numberOf } from '../support/answers.ts'

const width = 20

const track = { straight: 180, radius: 69, widthStraights: width, widthTurns: width }

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

describe('a level survey', () => {
  const inputs = {
    ...track,
    blend: 15,
    depth: 0.03,
    unitWeight: 1600,
    baseWeight: 2000,
    wantedStraights: 0.025,
    wantedTurns: 0.06,
  }

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

  it('parts what stands high into cushion and base, each with its own weight', () => {
    const found = levelSurvey(level(0.02)).compute({
      ...inputs,
      wantedStraights: 0.03,
      wantedTurns: 0.03,
    })
    // A wedge of 0.01 × 10 m = 0.1 m at the edge: all above 0.03 m is base.
    const [volume, base] = [numberOf(found.volume), numberOf(found.base)]
    expect(base).toBeGreaterThan(0)
    expect(base).toBeLessThan(volume)
    expect(numberOf(found.mass)).toBeCloseTo((volume - base) * 1600, 3)
    expect(numberOf(found['base-mass'])).toBeCloseTo(base * 2000, 3)
    // Within the depth of the cushion nothing of it is base.
    const little = levelSurvey(level(0.028)).compute({
      ...inputs,
      wantedStraights: 0.03,
      wantedTurns: 0.03,
    })
    expect(little.base).toBe(0)
  })

  it('sees a ridge at the rail as the largest bump', () => {
    expect(
      numberOf(
        levelSurvey(level(0.025, (_, offset) => (offset < 2 ? 0.05 : 0))).compute(inputs).worst,
      ),
    ).toBeGreaterThan(0.01)
  })
})
