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
  use('drain', sheetFlow, {
    length: fact('oval.width.straights'),
    slope: fact('oval.cross-fall.straights'),
    rain: fixed(system === 'us' ? (2 * inch) / 3600 : 0.05 / 3600, 'cloudburst'),
    roughness: fixed(0.011, 'bare-ground'),
    runoff: fixed(0.9, 'sealed-surface'),
    rail: fact('oval.station-spacing'),
  }),
]
