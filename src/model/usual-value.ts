import type { Typical } from './fact-spec.ts'
import type { UnitSystem } from './quantity/kinds.ts'
import { parseQuantity } from './quantity/parse-quantity.ts'

/**
 * What stands in for a fact that nobody has given, in SI.
 * @throws RangeError when the reference data cannot be read.
 */
export function usualValue(typical: Typical | undefined, system: UnitSystem): number {
  const parsed = parseQuantity(typical?.[system] ?? '', { plain: true })
  if (!parsed.ok) throw new RangeError(`reference data: ${typical?.[system]}`)
  return parsed.quantity.si
}
