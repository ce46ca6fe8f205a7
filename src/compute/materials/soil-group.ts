import { type Refusal, refuse } from '../calculation.ts'
import { coefficients } from './gradation.ts'
import { share } from './guards.ts'

/** What a laboratory sheet says of a soil; shares by dry mass, limits as shares of dry mass. */
export type SoilTests = {
  /** Finer than a No. 200 sieve, of the part that passes 3 in. */
  readonly fines: number
  /** Between No. 4 and No. 200. */
  readonly sand: number
  /** Liquid and plastic limit; undefined for a soil that is not plastic. */
  readonly limits?: { readonly liquid: number; readonly plastic: number }
  /** D10, D30 and D60 in meters; needed only when fines are 12 % or less. */
  readonly sizes?: readonly [number, number, number]
}

/** Keeps a limit that stands exactly on a line from falling off it. */
const SLACK = 1e-9

/** Where the fines plot on the plasticity chart: clay, silt, or the hatched strip between. */
function plasticity(limits: SoilTests['limits']): 'C' | 'M' | 'CM' {
  if (!limits) return 'M'
  const index = limits.liquid - limits.plastic
  const aLine = 0.73 * (limits.liquid - 0.2)
  if (index < aLine - SLACK || index < 0.04 - SLACK) return 'M'
  return index <= 0.07 + SLACK ? 'CM' : 'C'
}

function fineGroup(limits: SoilTests['limits']): string {
  const kind = plasticity(limits)
  if (limits && limits.liquid >= 0.5) return kind === 'M' ? 'MH' : 'CH'
  return kind === 'CM' ? 'CL-ML' : `${kind}L`
}

function coarseGroup({ fines, sand, limits, sizes }: SoilTests): string | Refusal {
  const letter = 1 - fines - sand > sand ? 'G' : 'S'
  const kind = plasticity(limits)
  if (fines > 0.12 + SLACK) return kind === 'CM' ? `${letter}C-${letter}M` : `${letter}${kind}`
  if (!sizes) return refuse('grain-sizes-unknown')
  const { uniformity, curvature } = coefficients(...sizes)
  const well = uniformity >= (letter === 'G' ? 4 : 6) && curvature >= 1 && curvature <= 3
  const clean = `${letter}${well ? 'W' : 'P'}`
  return fines < 0.05 - SLACK ? clean : `${clean}-${letter}${kind === 'M' ? 'M' : 'C'}`
}

/**
 * Group symbol of a mineral soil in the Unified Soil Classification System.
 * Fines of exactly 5 % or 12 % lie in the range of dual symbols. Organic soils are not told apart.
 * @returns Symbol such as `SP-SM`; a refusal when what decides is not known.
 * @throws RangeError when a share is not a share, or the parts add up to more than one.
 * @see astm-d2487
 */
export function soilGroup(tests: SoilTests): string | Refusal {
  share('fines', tests.fines)
  share('sand', tests.sand)
  if (!(tests.fines + tests.sand <= 1 + SLACK))
    throw new RangeError('sand and fines add up to more than the sample')
  return tests.fines >= 0.5 - SLACK ? fineGroup(tests.limits) : coarseGroup(tests)
}
