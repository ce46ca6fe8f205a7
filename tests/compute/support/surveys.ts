import fc from 'fast-check'
import { railOf } from '../../../src/compute/survey/along.ts'
import type { SurveyDay } from '../../../src/model/survey.ts'
import { inches, ovals } from './realistic.ts'

/** A survey on even stations and three lines, with any depths. */
export const surveys = fc
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
