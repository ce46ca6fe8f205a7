import type { PdfArray, PdfDictionary, PdfObject, PdfReference } from './kinds.ts'
import { inside, isA, outside, type Value } from './values.ts'

// What an object is: each of these gives nothing for an object of another kind, and none of them
// follows references.

export function asName(object: PdfObject | undefined): string | undefined {
  const is = inside(object)
  return isA(is, 'name') ? is.text : undefined
}

export function asNumber(object: PdfObject | undefined): number | undefined {
  const is: Value | undefined = inside(object)
  return typeof is === 'number' ? is : undefined
}

/** What is written with a backslash in a string (ISO 32000-1, table 3). */
const escapes: Readonly<Record<string, string>> = {
  n: '\n',
  r: '\r',
  t: '\t',
  b: '\b',
  f: '\f',
  '\n': '',
}

const unescaped = (said: string): string =>
  said.replace(/\\([0-7]{1,3}|\r\n|.)/gs, (_, code: string) =>
    /^[0-7]/.test(code) ? String.fromCharCode(Number.parseInt(code, 8)) : (escapes[code] ?? code),
  )

/** Text begins with a mark of UTF-16, or is plain: nothing else is written by the browser or by us. */
function decoded(bytes: Buffer): string {
  const isUnicode = bytes[0] === 0xfe && bytes[1] === 0xff
  return isUnicode ? bytes.subarray(2).swap16().toString('utf16le') : bytes.toString('latin1')
}

/** What a string says, decoded. */
export function asText(object: PdfObject | undefined): string | undefined {
  const is = inside(object)
  if (isA(is, 'digits')) {
    const digits = is.digits.replace(/\s/g, '')
    // A last digit that is missing is zero (ISO 32000-1, 7.3.4.3).
    return decoded(Buffer.from(digits.length % 2 === 0 ? digits : `${digits}0`, 'hex'))
  }
  if (!isA(is, 'text')) return undefined
  const said = is.said.includes('\\') ? unescaped(is.said) : is.said
  return said.startsWith('\xFE\xFF') ? decoded(Buffer.from(said, 'latin1')) : said
}

export const asDictionary = (object: PdfObject | undefined): PdfDictionary | undefined =>
  isA(inside(object), 'dictionary') ? (object as PdfDictionary) : undefined

export const asArray = (object: PdfObject | undefined): PdfArray | undefined =>
  Array.isArray(object) ? (object as unknown as PdfArray) : undefined

export const asReference = (object: PdfObject | undefined): PdfReference | undefined =>
  isA(inside(object), 'reference') ? (object as PdfReference) : undefined

/** The number of the object that a reference leads to. */
export const objectNumber = (reference: PdfReference): number => inside(reference).number

/** The items of an array as they stand, references among them. */
export const itemsOf = (array: PdfArray | undefined): readonly PdfObject[] =>
  array ? inside(array).map((item) => outside(item)) : []

export const setItem = (array: PdfArray, index: number, item: PdfObject): void => {
  inside(array)[index] = inside(item)
}
