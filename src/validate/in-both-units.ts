import type { UnitSystem } from '../model/quantity/kinds.ts'

/** One value in the units of the place, and behind them in brackets in the others: `2.1 in (53 mm)`. */
export const inBothUnits = (
  system: UnitSystem | undefined,
  { us, metric }: Readonly<Record<UnitSystem, string>>,
): string => (system === 'metric' ? `${metric} (${us})` : `${us} (${metric})`)
