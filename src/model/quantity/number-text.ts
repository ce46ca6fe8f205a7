/**
 * How numbers are written in the language of the manual: its sign for thousands and for decimals.
 * The only place that asks the language.
 */
const language = 'en-US'

const formats = new Map<string, Intl.NumberFormat>()

/** Making a format takes far longer than using it. */
function formatOf(options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = JSON.stringify(options)
  const known = formats.get(key) ?? new Intl.NumberFormat(language, options)
  formats.set(key, known)
  return known
}

/** With a minus as long as a plus, and no minus before nought. */
const written = (value: number, options: Intl.NumberFormatOptions): string =>
  formatOf(options)
    .format(Object.is(value, -0) ? 0 : value)
    .replace('-', '−')

/** `1,700.5` with so many decimals. */
export const decimalText = (value: number, decimals: number): string =>
  written(value, { minimumFractionDigits: decimals, maximumFractionDigits: decimals })

/** With up to so many significant digits, never as 1e-7. */
export const significantText = (value: number, digits: number): string =>
  written(Math.abs(value) < 1e-12 ? 0 : value, { maximumSignificantDigits: digits })

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
  formatOf({
    style: 'currency',
    currency,
    minimumFractionDigits: decimals,
    maximumFractionDigits: most,
  }).format(value)
