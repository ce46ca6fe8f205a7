import type { Calculation } from '../calculation.ts'
import { timedSpeed } from '../coverage/timed-speed.ts'
import { oversize } from '../materials/oversize.ts'
import { plasticity } from '../materials/plasticity.ts'
import { sprayPressure } from '../water/spray-pressure.ts'

/**
 * Calculations that no worksheet shows, since what goes in is read off on the spot: `explain --all`
 * works them, and content says where they are of use.
 */
export const looseCalculations: readonly Calculation[] = [
  sprayPressure,
  timedSpeed,
  oversize,
  plasticity,
]
