import { factSpec } from '../../src/model/fact-spec.ts'
import type { Material } from '../../src/model/oval-choices.ts'
import { parseQuantity } from '../../src/model/quantity/parse-quantity.ts'

/** What stands in for a fact that a facility does not give, in SI. */
export function usual(path: string, material: Material = 'stone-dust'): number {
  const read = parseQuantity(factSpec(path)?.typical(material)?.us ?? '', { plain: true })
  return read.ok ? read.quantity.si : Number.NaN
}
