import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { cushionUses } from './cushion.ts'
import { drainageUses } from './drainage.ts'
import { materialUses } from './materials.ts'
import { moneyUses } from './money.ts'
import { ovalUses } from './oval.ts'
import { pullbackUses } from './pullback.ts'
import { racingUses } from './racing.ts'
import type { Readings } from './readings.ts'
import { repairUses } from './repairs.ts'
import { safetyUses } from './safety.ts'
import { sealingUses } from './sealing.ts'
import { seasonUses } from './season.ts'
import { stopgapUses } from './stopgap.ts'
import { surveyUses } from './survey.ts'
import type { Use } from './use.ts'
import { waterUses } from './water.ts'
import { recordUses, weatherUses } from './weather.ts'
import { workingUses } from './working.ts'

/**
 * What is computed from single facts; some of it takes figures of the readings where there are any.
 * @param known Paths of the facts that the facility has, with those that stand in for it.
 * @param system Steps that the trade talks of differ: a quarter inch, or 5 mm.
 */
export const factUses = (known: ReadonlySet<string>, system: UnitSystem): readonly Use[] =>
  [
    ovalUses,
    cushionUses,
    workingUses,
    pullbackUses,
    waterUses,
    sealingUses,
    repairUses,
    stopgapUses,
    drainageUses,
    weatherUses,
    safetyUses,
    racingUses,
    moneyUses,
    seasonUses,
  ].flatMap((uses) => [...uses(known, system)])

/**
 * What is computed for a facility, from which facts and figures. Worksheet numbers follow
 * the sections.
 * @param data Surveys and records, whose readings are worked with as they are.
 */
export const allUses = (
  known: ReadonlySet<string>,
  system: UnitSystem,
  data: Readings,
): readonly Use[] => [
  ...factUses(known, system),
  ...surveyUses(data),
  ...recordUses(known, data),
  ...materialUses(known, data),
]
