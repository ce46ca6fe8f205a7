/** The first number of a text: its digits with what people put between them, and an extension. */
const firstNumber =
  /(?<digits>[+(]?[\d*#][\d\s().*#-]*)(?<letters>[A-Za-z]*)\.?\s*(?<extension>\d{1,7})?/

const extensionWords = ['ext', 'extn', 'extension', 'x']

/**
 * Where a touch on a telephone number leads: it rings (RFC 3966). Of several numbers in one text the
 * first is meant; an extension is dialed after the connection. Empty where there is no number, and
 * where letters are part of it, which are never guessed at.
 */
export function telephone(phone: string): string {
  const { digits = '', letters = '', extension } = firstNumber.exec(phone)?.groups ?? {}
  const number = digits.replace(/[^\d+*#]/g, '')
  if (number === '') return ''
  const isExtension = extensionWords.includes(letters.toLowerCase())
  if (letters !== '' && !isExtension && !/\s$/.test(digits)) return ''
  return isExtension && extension !== undefined ? `tel:${number};ext=${extension}` : `tel:${number}`
}
