import type { FontTables } from './woff.ts'

/** What a PDF says of a font, in thousandths of the type's size. */
export type FontMetrics = {
  /** Width of each character of the Windows code page, from the space on. */
  readonly widths: readonly number[]
  readonly ascent: number
  readonly descent: number
  readonly capHeight: number
  readonly box: readonly number[]
}

/** First and last character of the code page that are letters or signs. */
export const [firstCode, lastCode] = [32, 255] as const

function tableOf(tables: FontTables, name: string): Buffer {
  const table = tables.get(name)
  if (!table) throw new RangeError(`the font has no table "${name}"`)
  return table
}

/** Where the map of Unicode in segments begins (format 4). */
function segmentMap(cmap: Buffer): number {
  const count = cmap.readUInt16BE(2)
  for (let i = 0; i < count; i++) {
    const at = cmap.readUInt32BE(4 + 8 * i + 4)
    if (cmap.readUInt16BE(at) === 4) return at
  }
  throw new RangeError('the font has no map of Unicode in segments')
}

/** The number of the glyph for a character, 0 where there is none. */
function glyphOf(cmap: Buffer, at: number, code: number): number {
  const twice = cmap.readUInt16BE(at + 6)
  for (let i = 0; i < twice; i += 2) {
    if (cmap.readUInt16BE(at + 14 + i) < code) continue
    const start = cmap.readUInt16BE(at + 16 + twice + i)
    if (start > code) return 0
    const delta = cmap.readUInt16BE(at + 16 + 2 * twice + i)
    const rangeAt = at + 16 + 3 * twice + i
    const range = cmap.readUInt16BE(rangeAt)
    if (range === 0) return (code + delta) & 0xffff
    const glyph = cmap.readUInt16BE(rangeAt + range + 2 * (code - start))
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff
  }
  return 0
}

/** Measures a font by its tables `head`, `hhea`, `hmtx`, `cmap` and `OS/2` (ISO/IEC 14496-22). */
export function metricsOf(tables: FontTables): FontMetrics {
  const [head, hhea, hmtx, cmap] = ['head', 'hhea', 'hmtx', 'cmap'].map((t) =>
    tableOf(tables, t),
  ) as [Buffer, Buffer, Buffer, Buffer]
  const thousandths = (units: number): number => Math.round((units * 1000) / head.readUInt16BE(18))
  const [map, known] = [segmentMap(cmap), hhea.readUInt16BE(34)]
  const page = new TextDecoder('windows-1252')
  const width = (code: number): number => {
    const character = page.decode(Uint8Array.of(code)).codePointAt(0) ?? 0
    const glyph = glyphOf(cmap, map, character)
    return thousandths(hmtx.readUInt16BE(4 * Math.min(glyph, known - 1)))
  }
  return {
    widths: Array.from({ length: lastCode - firstCode + 1 }, (_, i) => width(firstCode + i)),
    ascent: thousandths(hhea.readInt16BE(4)),
    descent: thousandths(hhea.readInt16BE(6)),
    capHeight: thousandths(tableOf(tables, 'OS/2').readInt16BE(88)),
    box: [36, 38, 40, 42].map((at) => thousandths(head.readInt16BE(at))),
  }
}
