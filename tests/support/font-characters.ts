import { brotliDecompressSync } from 'node:zlib'

// Which characters a font has, read from its WOFF2 file by hand (W3C, WOFF File Format 2.0; table
// `cmap`: ISO/IEC 14496-22), so that nothing that shows the pages judges them.

const headerLength = 48

/** Places of tags in the list of known ones; `cmap` is the first. */
const cmapTag = 0
const [glyf, loca] = [10, 11]
const ownTag = 63

/** A number in groups of seven bits. @returns it with where the next begins. */
function base128(bytes: Buffer, start: number): readonly [value: number, end: number] {
  let [value, at] = [0, start]
  for (;;) {
    const byte = bytes.readUInt8(at++)
    value = value * 128 + (byte & 0x7f)
    if ((byte & 0x80) === 0) return [value, at]
  }
}

/** The table of characters, out of all tables of a font. */
function cmapOf(file: Buffer): Buffer {
  let [at, offset] = [headerLength, 0]
  let found: readonly [from: number, to: number] | undefined
  for (let table = 0; table < file.readUInt16BE(12); table++) {
    const flags = file.readUInt8(at++)
    const [tag, version] = [flags & 0x3f, flags >> 6]
    if (tag === ownTag) at += 4
    let length: number
    ;[length, at] = base128(file, at)
    const isTransformed = tag === glyf || tag === loca ? version !== 3 : version !== 0
    if (isTransformed) [length, at] = base128(file, at)
    if (tag === cmapTag) found = [offset, offset + length]
    offset += length
  }
  const data = brotliDecompressSync(file.subarray(at, at + file.readUInt32BE(20)))
  return data.subarray(...(found ?? [0, 0]))
}

/** Segments with an index into the font's glyphs: characters of the first plane. */
function* ofSegments(table: Buffer): Generator<number> {
  const count = table.readUInt16BE(6) / 2
  const ends = 14
  const starts = ends + 2 * count + 2
  for (let i = 0; i < count; i++) {
    const [end, start] = [table.readUInt16BE(ends + 2 * i), table.readUInt16BE(starts + 2 * i)]
    const delta = table.readUInt16BE(starts + 2 * count + 2 * i)
    const at = starts + 4 * count + 2 * i
    const offset = table.readUInt16BE(at)
    for (let code = start; code <= end && code < 0xffff; code++) {
      const glyph = offset === 0 ? code : table.readUInt16BE(at + offset + 2 * (code - start))
      if (glyph !== 0 && ((glyph + delta) & 0xffff) !== 0) yield code
    }
  }
}

/** Groups of characters of all planes. */
function* ofGroups(table: Buffer): Generator<number> {
  for (let i = 0; i < table.readUInt32BE(12); i++) {
    const [start, end] = [table.readUInt32BE(16 + 12 * i), table.readUInt32BE(20 + 12 * i)]
    for (let code = start; code <= end; code++) yield code
  }
}

/** The code points for which a font has a shape. */
export function fontCharacters(woff2: Uint8Array): ReadonlySet<number> {
  const cmap = cmapOf(Buffer.from(woff2))
  const codes = new Set<number>()
  for (let i = 0; i < cmap.readUInt16BE(2); i++) {
    const table = cmap.subarray(cmap.readUInt32BE(8 + 8 * i))
    const format = table.readUInt16BE(0)
    for (const code of format === 4 ? ofSegments(table) : format === 12 ? ofGroups(table) : [])
      codes.add(code)
  }
  return codes
}
