import { strFromU8, strToU8 } from 'fflate'

/** Bytes as UTF-8; undefined for what is none, or holds what no text has. */
export function utf8Text(bytes: Uint8Array): string | undefined {
  if (bytes.includes(0)) return undefined
  const text = strFromU8(bytes)
  // What cannot be read becomes U+FFFD, whose own bytes are others.
  if (!text.includes('\uFFFD')) return text
  const back = strToU8(text)
  return back.length === bytes.length && back.every((byte, i) => byte === bytes[i])
    ? text
    : undefined
}

/** What the bytes from 0x80 to 0x9F mean in windows-1252; five of them mean nothing. */
const upper = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ'

const fromWindows = (bytes: Uint8Array): string =>
  Array.from(bytes, (byte) =>
    byte >= 0x80 && byte < 0xa0 ? (upper[byte - 0x80] ?? '') : String.fromCharCode(byte),
  ).join('')

/** Text of two bytes a letter, after its mark. @param high Which of the two counts for more. */
const fromUtf16 = (bytes: Uint8Array, high: 0 | 1): string =>
  Array.from({ length: Math.floor(bytes.length / 2) }, (_, i) =>
    String.fromCharCode(((bytes[2 * i + high] ?? 0) << 8) | (bytes[2 * i + 1 - high] ?? 0)),
  ).join('')

/**
 * The text of a table in any encoding in which spreadsheets save one: UTF-8, UTF-16 by its mark, else
 * windows-1252. Undefined for what is no text at all.
 */
export function tableText(bytes: Uint8Array): string | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return fromUtf16(bytes.subarray(2), 1)
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return fromUtf16(bytes.subarray(2), 0)
  const text = utf8Text(bytes)
  // Signs that no keyboard types are those of another kind of file.
  if (text !== undefined) return text
  return bytes.some((byte) => byte < 9 || (byte > 13 && byte < 32)) ? undefined : fromWindows(bytes)
}
