import { Inflate } from 'fflate'

/** What an archive may unpack to at most, bytes: a season of readings is a tenth of it. */
const mostUnpacked = 16 * 1024 * 1024
/** Bytes of an archive that are unpacked at a time; a byte of them becomes 1,032 at most. */
const step = 8 * 1024
/** Parts that an archive may have at most; a workbook has some three a sheet. */
const mostParts = 2000

/** A part of an archive, where it lies. */
type Part = {
  readonly name: string
  readonly method: number
  readonly packed: number
  /** Where its own head begins. */
  readonly at: number
}

/** Parts by name, unpacked when they are asked for; together never more than a workbook holds. */
export type Archive = {
  readonly names: readonly string[]
  /** A part, unpacked; undefined where there is none. @throws ArchiveFault */
  readonly part: (name: string) => Uint8Array | undefined
}

/** Why an archive is not unpacked. */
export type ArchiveFault = 'broken' | 'locked' | 'too-much' | 'too-many'

/** Thrown inside the reading of a workbook, and caught where it begins. */
export type ArchiveStop = { readonly stop: ArchiveFault }
export const isStop = (thrown: unknown): thrown is ArchiveStop =>
  typeof thrown === 'object' && thrown !== null && 'stop' in thrown
const stop = (fault: ArchiveFault): never => {
  throw { stop: fault } satisfies ArchiveStop
}

const short = (bytes: Uint8Array, at: number): number =>
  (bytes[at] ?? 0) | ((bytes[at + 1] ?? 0) << 8)
const long = (bytes: Uint8Array, at: number): number =>
  (short(bytes, at) | (short(bytes, at + 2) << 16)) >>> 0

const endMark = 0x06054b50
const listMark = 0x02014b50
const partMark = 0x04034b50

/** Where the record at the end of an archive stands, which says where its list of parts is. */
function endOf(bytes: Uint8Array): number {
  const first = Math.max(0, bytes.length - 22 - 0xffff)
  for (let at = bytes.length - 22; at >= first; at--) if (long(bytes, at) === endMark) return at
  return stop('broken')
}

const nameOf = (bytes: Uint8Array, from: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(from, from + length))

function partsOf(bytes: Uint8Array): readonly Part[] {
  const end = endOf(bytes)
  const count = short(bytes, end + 10)
  if (count > mostParts) stop('too-many')
  const parts: Part[] = []
  let at = long(bytes, end + 16)
  for (let i = 0; i < count; i++) {
    if (long(bytes, at) !== listMark) stop('broken')
    if ((short(bytes, at + 8) & 1) === 1) stop('locked')
    const [name, extra, remark] = [28, 30, 32].map((o) => short(bytes, at + o)) as [
      number,
      number,
      number,
    ]
    parts.push({
      name: nameOf(bytes, at + 46, name),
      method: short(bytes, at + 10),
      packed: long(bytes, at + 20),
      at: long(bytes, at + 42),
    })
    at += 46 + name + extra + remark
  }
  return parts
}

/** Unpacks one part, never more than is left of what all may have. */
function unpacked(bytes: Uint8Array, part: Part, left: number): Uint8Array {
  if (long(bytes, part.at) !== partMark) stop('broken')
  const from = part.at + 30 + short(bytes, part.at + 26) + short(bytes, part.at + 28)
  const packed = bytes.subarray(from, from + part.packed)
  if (packed.length < part.packed) stop('broken')
  if (part.method === 0) return packed.length > left ? stop('too-much') : packed
  if (part.method !== 8) return stop('broken')
  const chunks: Uint8Array[] = []
  let size = 0
  const inflate = new Inflate((chunk) => {
    size += chunk.length
    if (size > left) stop('too-much')
    chunks.push(chunk)
  })
  try {
    for (let at = 0; at < packed.length; at += step)
      inflate.push(packed.subarray(at, at + step), at + step >= packed.length)
  } catch (thrown) {
    if (isStop(thrown)) throw thrown
    return stop('broken')
  }
  const whole = new Uint8Array(size)
  let to = 0
  for (const chunk of chunks) {
    whole.set(chunk, to)
    to += chunk.length
  }
  return whole
}

/**
 * Opens a ZIP archive (APPNOTE.TXT of PKWARE, version 6.3) as its list of parts at the end says.
 * What sizes it states is not believed: parts are unpacked in small steps, and all of them together
 * to no more than `mostUnpacked`.
 * @throws ArchiveStop
 */
export function openArchive(bytes: Uint8Array): Archive {
  const parts = new Map(partsOf(bytes).map((part) => [part.name, part]))
  let left = mostUnpacked
  return {
    names: [...parts.keys()],
    part: (name) => {
      const part = parts.get(name)
      if (!part) return undefined
      const whole = unpacked(bytes, part, left)
      left -= whole.length
      return whole
    },
  }
}
