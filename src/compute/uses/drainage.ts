import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { inch } from '../../model/quantity/units.ts'
import { sheetFlow } from '../drainage/sheet-flow.ts'
import { fact, fixed, type Use, use } from './use.ts'

/**
 * Rain that runs to the rail of a sealed straight.
 * @param _known Paths of the facts that the facility has.
 * @param system Decides whether the cloudburst is two inches or fifty millimeters an hour.
 */
export const drainageUses = (_known: ReadonlySet<string>, system: UnitSystem): readonly Use[] => [
  use(66, 'drain', sheetFlow, {
    length: fact('oval.width.straights'),
    slope: fact('oval.cross-fall.straights'),
    rain:
      system === 'us'
        ? fixed((2 * inch) / 3600, 'a cloudburst of two inches an hour')
        : fixed(0.05 / 3600, 'a cloudburst of 50 mm an hour'),
    roughness: fixed(0.011, 'smooth bare ground'),
    runoff: fixed(0.9, 'a sealed surface'),
    rail: fact('oval.station-spacing'),
  }),
]
