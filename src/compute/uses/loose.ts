import type { Calculation } from '../calculation.ts'

/**
 * Calculations that no worksheet shows, since what goes in is read off on the spot: `explain --all`
 * works them.
 */
export const looseCalculations: readonly Calculation[] = []
