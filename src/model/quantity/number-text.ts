/**
 * How numbers are written in the language of the manual: its sign for thousands and for decimals.
 * The only place that asks the language.
 */
const language = 'en-US'

/** One way of writing numbers, with what it has written so far. */
type Format = { readonly intl: Intl.NumberFormat; readonly written: Map<number, string> }

const formats = new Map<string, Format>()

/** So many numbers are remembered of a format. */
const most = 4000

/**
 * Writes a number. Making a format takes far longer than using it, and using it far longer than
 * looking up what it has written: a manual writes the same few thousand numbers many times.
 * @param value No nought with a minus.
 */
function write(value: number, key: string, options: () => Intl.NumberFormatOptions): string {
  let format = formats.get(key)
  if (!format) {
    format = { intl: new Intl.NumberFormat(language, options()), written: new Map() }
    formats.set(key, format)
  }
  const known = format.written.get(value)
  if (known !== undefined) return known
  const text = format.intl.format(value)
  if (format.written.size >= most) format.written.clear()
  format.written.set(value, text)
  return text
}

const withoutMinus = (value: number): number => (value === 0 ? 0 : value)

/** With a minus as long as a plus, and no minus before nought. */
const written = (value: number, key: string, options: () => Intl.NumberFormatOptions): string =>
  write(withoutMinus(value), key, options).replace('-', '−')

/** `1,700.5` with so many decimals. */
export const decimalText = (value: number, decimals: number): string =>
  written(value, `decimals ${decimals}`, () => ({
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  }))

/** With up to so many significant digits, never as 1e-7. */
export const significantText = (value: number, digits: number): string =>
  written(Math.abs(value) < 1e-12 ? 0 : value, `digits ${digits}`, () => ({
    maximumSignificantDigits: digits,
  }))

/**
 * An amount of money.
 * @param currency ISO 4217 code.
 */
export const moneyText = (
  value: number,
  currency: string,
  decimals: number,
  most = decimals,
): string =>
  write(withoutMinus(value), `${currency} ${decimals} ${most}`, () => ({
    style: 'currency',
    currency,
    minimumFractionDigits: decimals,
    maximumFractionDigits: most,
  }))
