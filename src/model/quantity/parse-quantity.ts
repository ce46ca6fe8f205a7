import { didYouMean } from '../closest.ts'
import { asSaid, riseOf, withoutAbout } from './as-said.ts'
import { longest, type ParsedQuantity, type Quantity, readQuantity } from './read-quantity.ts'
import { slipOf } from './slips.ts'
import { dimensionless, sameDims, unitNames } from './units.ts'

/** A rise over a length is the share by which something slopes. */
function slopeIn(text: string): Quantity | undefined {
  const { rise = '', run = '' } = riseOf(text) ?? {}
  if (rise === '') return undefined
  const [up, along] = [readQuantity(rise), readQuantity(run)]
  const isSlope =
    up.ok && along.ok && sameDims(up.quantity.dims, along.quantity.dims) && along.quantity.si > 0
  return isSlope ? { si: up.quantity.si / along.quantity.si, dims: dimensionless, text } : undefined
}

/** What was said in words, or as no more than an estimate; nothing where that is not read either. */
function saidIn(text: string, options: { readonly plain?: boolean }): Quantity | undefined {
  if (text.length > longest) return undefined
  const exact = withoutAbout(text)
  const said = asSaid(exact.text)
  const read = readQuantity(said, options)
  const found = read.ok ? read.quantity : slopeIn(said)
  return found && { ...found, text: text.trim(), ...(exact.isRough ? { isRough: true } : {}) }
}

/**
 * Reads a quantity as people write it: `2 1/2 in`, `60 ft`, `2,000 gal`, `120 gal/min`, `452 ft 6
 * in`, `9'6"`, `1 h 25 min`, `1:30 PM`, `$85/h`, `1.4 t/m3`, `2 %`, `85 °F`. A number without a unit is a fault,
 * except where a plain number is asked for with `plain`. What is said in words is read too (`half a
 * mile`, `forty feet`, `$6 per thousand gallons`, `2 1/2 in in 10 ft`), and `about 60 ft` with a mark.
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
  const said = saidIn(text, options)
  if (said) return { ok: true, quantity: said }
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
