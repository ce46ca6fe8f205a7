/** Where a formula says what it is equal to. */
const equals = ' = '

/** What is said of its own letters stands behind a comma with a wide space. */
const aside = /,\\(?:quad|;)/

/** What stands before the first equals sign: the symbol of what is worked out. */
const symbolOf = (tex: string): string => tex.split(equals)[0] ?? ''

/**
 * A formula with numbers, to be set behind the formula itself: without the symbol that both begin
 * with, and the result alone where no number was put in.
 * @param tex `a = b + c`
 * @param numbers `a = 1 + 2 = 3`
 * @returns ` = 1 + 2 = 3`; the whole where it does not go on from the formula.
 */
export function numbersBehind(tex: string, numbers: string): string {
  if (aside.test(tex)) return numbers
  if (numbers.startsWith(`${tex}${equals}`)) return numbers.slice(tex.length)
  const symbol = `${symbolOf(tex)}${equals}`
  return numbers.startsWith(symbol) ? numbers.slice(symbol.length - equals.length) : numbers
}

/** The number that a formula with numbers comes to, before it is rounded. */
export const resultOf = (numbers: string): string =>
  numbers.split(aside)[0]?.split(equals).at(-1) ?? ''

/** A number in TeX as plain letters without spaces, to be compared with how it is printed. */
export const plainNumber = (tex: string): string =>
  tex
    .replace(/\\t?frac\{?(\d+)\}?\{?(\d+)\}?/g, '$1/$2')
    .replace(/\\text|\\[,;]|[{}\\\s]/g, '')
    .replaceAll('-', '−')
