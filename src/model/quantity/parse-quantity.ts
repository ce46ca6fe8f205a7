import { didYouMean } from '../closest.ts'
import { type ParsedQuantity, readQuantity } from './read-quantity.ts'
import { slipOf } from './slips.ts'
import { unitNames } from './units.ts'

/**
 * Reads a quantity as people write it: `2 1/2 in`, `60 ft`, `2,000 gal`, `120 gal/min`, `452 ft 6
 * in`, `9'6"`, `1 h 25 min`, `1:30 PM`, `$85/h`, `1.4 t/m3`, `2 %`, `85 °F`. A number without a unit is a fault,
 * except where a plain number is asked for with `plain`.
 * @param text What stands in the file.
 * @param options.plain Accept a number with no unit at all (counts, ratios).
 * @returns The quantity in SI units, or the fault with its position inside `text`.
 */
export function parseQuantity(
  text: string,
  options: { readonly plain?: boolean } = {},
): ParsedQuantity {
  const read = readQuantity(text, options)
  if (read.ok) return read
  const { unit } = read.fault
  const slip = slipOf(text)
  if (!slip)
    return unit === undefined
      ? read
      : { ok: false, fault: { ...read.fault, hint: didYouMean(unit, unitNames) } }
  const from = Math.max(0, text.search(/\S/))
  return {
    ok: false,
    fault: {
      code: 'quantity/number',
      ...slip,
      saysAll: true,
      at: from,
      length: text.trim().length,
    },
  }
}
