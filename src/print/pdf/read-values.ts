import { type Dictionary, nameOf, type Objects, refer, type Stream, type Value } from './values.ts'

// Reads objects as the browser and we ourselves write them (ISO 32000-1, 7.2 and 7.3).

/** A place in a file. */
export type Reading = {
  /** One character a byte. */
  readonly text: string
  readonly bytes: Uint8Array
  /** Where what is read comes to stand. */
  readonly objects: Objects
  at: number
}

const [space, percent, slash, less, greater] = [32, 37, 47, 60, 62]
const [roundOpen, roundClose, squareOpen, squareClose, backslash] = [40, 41, 91, 93, 92]
const [zero, nine, minus, plus, dot, letterR] = [48, 57, 45, 43, 46, 82]

/** White space and what else ends a name or a number (table 1 and 2). */
const ends = new Uint8Array(256)
for (const c of [0, 9, 10, 12, 13, 32]) ends[c] = 1
for (const c of '()<>[]{}/%') ends[c.charCodeAt(0)] = 1

const isDigit = (c: number): boolean => c >= zero && c <= nine

/** Passes white space and comments. */
export function pass(from: Reading): void {
  const { text } = from
  for (;;) {
    const c = text.charCodeAt(from.at)
    if (c === percent)
      while (from.at < text.length && !/[\r\n]/.test(text.charAt(from.at))) from.at++
    else if (c <= space) from.at++
    else return
  }
}

const fault = (from: Reading): Error => new Error(`no object at byte ${from.at} of a PDF`)

/** A whole number, which is passed. */
export function readWhole(from: Reading): number {
  const { text } = from
  let value = 0
  for (let c = text.charCodeAt(from.at); isDigit(c); c = text.charCodeAt(++from.at))
    value = value * 10 + c - zero
  return value
}

/** A number, or a reference, which begins like one. */
function readNumber(from: Reading): Value {
  const { text } = from
  const start = from.at
  const value = readWhole(from)
  let c = text.charCodeAt(from.at)
  if (from.at === start || c === dot) {
    while (from.at < text.length && ends[text.charCodeAt(from.at)] === 0) from.at++
    return Number(text.slice(start, from.at))
  }
  const end = from.at
  while (c === space) c = text.charCodeAt(++from.at)
  if (from.at > end && isDigit(c)) {
    readWhole(from)
    pass(from)
    if (text.charCodeAt(from.at) === letterR) {
      from.at++
      return refer(value)
    }
  }
  from.at = end
  return value
}

function readName(from: Reading): Value {
  const { text } = from
  const start = ++from.at
  while (from.at < text.length && ends[text.charCodeAt(from.at)] === 0) from.at++
  const code = text.slice(start, from.at)
  return nameOf(
    code.includes('#')
      ? code.replace(/#([\dA-Fa-f]{2})/g, (_, hex: string) =>
          String.fromCharCode(parseInt(hex, 16)),
        )
      : code,
  )
}

function readText(from: Reading): Value {
  const { text } = from
  const start = ++from.at
  for (let depth = 1; depth > 0; from.at++) {
    const c = text.charCodeAt(from.at)
    if (from.at >= text.length) throw fault(from)
    if (c === backslash) from.at++
    else if (c === roundOpen) depth++
    else if (c === roundClose) depth--
  }
  return { kind: 'text', said: text.slice(start, from.at - 1) }
}

function readDigits(from: Reading): Value {
  const start = ++from.at
  from.at = from.text.indexOf('>', start) + 1
  if (from.at === 0) throw fault(from)
  return { kind: 'digits', digits: from.text.slice(start, from.at - 1) }
}

function readList(from: Reading): Value {
  const items: Value[] = []
  from.at++
  for (;;) {
    pass(from)
    if (from.text.charCodeAt(from.at) === squareClose) break
    items.push(readValue(from))
  }
  from.at++
  return items
}

function readDictionary(from: Reading): Dictionary {
  const entries: Value[] = []
  from.at += 2
  for (;;) {
    pass(from)
    if (from.text.charCodeAt(from.at) !== slash) break
    const name = readName(from)
    pass(from)
    entries.push(name, readValue(from))
  }
  if (!from.text.startsWith('>>', from.at)) throw fault(from)
  from.at += 2
  return { kind: 'dictionary', home: from.objects, entries }
}

const words: readonly (readonly [string, Value])[] = [
  ['true', true],
  ['false', false],
  ['null', null],
]

/** The object that begins here, which is passed. @throws Error where none begins. */
export function readValue(from: Reading): Value {
  const { text } = from
  const c = text.charCodeAt(from.at)
  if (c === slash) return readName(from)
  if (isDigit(c) || c === minus || c === plus || c === dot) return readNumber(from)
  if (c === less)
    return text.charCodeAt(from.at + 1) === less ? readDictionary(from) : readDigits(from)
  if (c === squareOpen) return readList(from)
  if (c === roundOpen) return readText(from)
  const word = c === greater ? undefined : words.find(([said]) => text.startsWith(said, from.at))
  if (!word) throw fault(from)
  from.at += word[0].length
  return word[1]
}

/**
 * An object that stands by itself, from its number on: a stream with its bytes, which are not copied.
 * @param lengthOf The length that a stream names.
 */
export function readObject(
  from: Reading,
  lengthOf: (dictionary: Dictionary) => number,
): Value | Stream {
  const { text, bytes } = from
  from.at = text.indexOf('obj', from.at) + 3
  pass(from)
  const value = readValue(from)
  if (typeof value !== 'object' || value === null || !('kind' in value)) return value
  if (value.kind !== 'dictionary') return value
  pass(from)
  if (!text.startsWith('stream', from.at)) return value
  from.at += 'stream'.length
  if (text.startsWith('\r\n', from.at)) from.at++
  from.at++
  const end = from.at + lengthOf(value)
  return { kind: 'stream', dictionary: value, bytes: bytes.subarray(from.at, end) }
}
