import { inflateSync } from 'node:zlib'

/** One table of a font file: its four letters and its bytes. */
export type FontTables = ReadonlyMap<string, Buffer>

const signature = 0x774f4646
const [headerLength, entryLength] = [44, 20]

/**
 * The tables of a font in the Web Open Font Format 1.0 (W3C, 2012, sections 4 and 5).
 * @throws RangeError when it is something else.
 */
export function tablesOfWoff(bytes: Uint8Array): FontTables {
  const file = Buffer.from(bytes)
  if (file.length < headerLength || file.readUInt32BE(0) !== signature)
    throw new RangeError('this is no WOFF file')
  return new Map(
    Array.from({ length: file.readUInt16BE(12) }, (_, i) => {
      const at = headerLength + i * entryLength
      const [offset, packed, length] = [4, 8, 12].map((n) => file.readUInt32BE(at + n)) as [
        number,
        number,
        number,
      ]
      const data = file.subarray(offset, offset + packed)
      return [file.toString('latin1', at, at + 4), packed < length ? inflateSync(data) : data]
    }),
  )
}

const padded = (length: number): number => Math.ceil(length / 4) * 4

/** Sum of a table as numbers of 32 bits. */
function checksum(table: Buffer): number {
  const whole = Buffer.alloc(padded(table.length))
  table.copy(whole)
  let sum = 0
  for (let at = 0; at < whole.length; at += 4) sum = (sum + whole.readUInt32BE(at)) >>> 0
  return sum
}

/** A TrueType file of these tables (ISO/IEC 14496-22, "Organization of an OpenType font"). */
export function trueTypeOf(tables: FontTables): Uint8Array {
  const names = [...tables.keys()].sort()
  const power = 2 ** Math.floor(Math.log2(names.length))
  const head = Buffer.alloc(12 + 16 * names.length)
  head.writeUInt32BE(0x00010000, 0)
  head.writeUInt16BE(names.length, 4)
  head.writeUInt16BE(power * 16, 6)
  head.writeUInt16BE(Math.log2(power), 8)
  head.writeUInt16BE(names.length * 16 - power * 16, 10)
  const parts: Buffer[] = [head]
  let offset = head.length
  names.forEach((name, i) => {
    const table = tables.get(name) ?? Buffer.alloc(0)
    const at = 12 + 16 * i
    head.write(name, at, 'latin1')
    head.writeUInt32BE(checksum(table), at + 4)
    head.writeUInt32BE(offset, at + 8)
    head.writeUInt32BE(table.length, at + 12)
    parts.push(table, Buffer.alloc(padded(table.length) - table.length))
    offset += padded(table.length)
  })
  return Buffer.concat(parts)
}
