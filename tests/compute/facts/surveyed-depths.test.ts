import { describe, expect, it } from 'vitest'
import type { KnownValues } from '../../../src/compute/facts/known.ts'
import { surveyedDepths } from '../../../src/compute/facts/surveyed-depths.ts'
import type { Survey } from '../../../src/validate/imports/survey-table.ts'
import { loadDemo } from '../../support/demo.ts'

const at = { file: 'facility.yaml', line: 1, column: 1, length: 1 }

const oval: KnownValues = new Map(
  Object.entries({
    'oval.straight': 200,
    'oval.radius': 60,
    'oval.width.straights': 20,
    'oval.width.turns': 20,
  }).map(([path, si]) => [path, { si, provenance: { kind: 'stated', at } }]),
)

/** Two stations; three readings at the first, of which two lie close together at the rail. */
const survey: Survey = {
  of: 'cushion-depth',
  by: 'A. Crew',
  at,
  days: [
    {
      date: '2027-06-12',
      readings: [
        { station: 0, offset: 1, value: 0.09 },
        { station: 0, offset: 2, value: 0.09 },
        { station: 0, offset: 15, value: 0.03 },
        { station: 388, offset: 10, value: 0.03 },
      ],
    },
  ],
} as unknown as Survey

const found = (known: KnownValues): number => surveyedDepths([survey], known, 'metric')[0]?.si ?? 0

describe('the depth that a survey finds', () => {
  it('counts each reading by the ground that it stands for', () => {
    // By count it is 60 mm; the two at the rail stand for a fifth of the track.
    expect(found(oval)).toBeGreaterThan(0.036)
    expect(found(oval)).toBeLessThan(0.048)
  })

  it('counts all alike where the file does not tell the oval', () => {
    expect(found(new Map())).toBeCloseTo(0.06, 12)
  })

  it('gives one mass of the same heap, whether by mean depth or by the ground of each reading', async () => {
    const { computed } = await loadDemo('larkmoor')
    const deep = computed?.engine.si('deep.mass') ?? 0
    expect(deep).toBeGreaterThan(200_000)
    expect(computed?.engine.si('balance.spare')).toBeCloseTo(deep, 6)
  })
})
