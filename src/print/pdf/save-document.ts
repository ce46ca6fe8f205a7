import type { PdfDocument } from './kinds.ts'
import { inside, outside } from './values.ts'
import { objectText } from './write-object.ts'
import {
  append,
  appendObjects,
  appendPacked,
  type Entry,
  emptyPiece,
  entryKinds,
  type FilePiece,
  type NumberedText,
} from './write-objects.ts'

/** Bytes of the columns of an entry: kind, place, index. */
const widths = [1, 4, 2] as const
const entryLength = 7

/** Runs of numbers without a gap, each as its first and how many there are. */
function runsOf(entries: readonly Entry[]): number[] {
  const runs: number[] = []
  for (const [i, { object }] of entries.entries()) {
    if (object === (entries[i - 1]?.object ?? Number.NaN) + 1) runs.push((runs.pop() ?? 0) + 1)
    else runs.push(object, 1)
  }
  return runs
}

/** The table of all objects, which is one of them itself (ISO 32000-1, 7.5.8). */
function appendTable(file: FilePiece, document: PdfDocument): void {
  const own = file.entries.reduce((most, e) => Math.max(most, e.object), 0) + 1
  const entries: readonly Entry[] = [
    { object: 0, kind: entryKinds.free, at: 0, index: 65535 },
    ...file.entries.sort((a, b) => a.object - b.object),
    { object: own, kind: entryKinds.byOffset, at: file.length, index: 0 },
  ]
  const table = Buffer.alloc(entries.length * entryLength)
  for (const [i, { kind, at, index }] of entries.entries()) {
    table.writeUInt8(kind, i * entryLength)
    table.writeUInt32BE(at, i * entryLength + 1)
    table.writeUInt16BE(index, i * entryLength + 5)
  }
  const { root, info, id } = inside(document)
  const named = Object.entries({ Root: root, Info: info, ID: id }).flatMap(([name, object]) =>
    object ? [`/${name} ${objectText(object)}`] : [],
  )
  const about = `/Type/XRef/W[${widths.join(' ')}]/Index[${runsOf(entries).join(' ')}]/Size ${own + 1}${named.join('')}`
  appendPacked(file, own, about, table)
}

/** Objects that have been written before, to stand in a file as they are. */
export type WrittenObjects = {
  readonly bytes: Uint8Array
  /** Object, kind, place and index of each entry, one after another. */
  readonly entries: Uint32Array
}

/** A piece of a file, to be kept. */
export const writtenObjects = ({ parts, length, entries }: FilePiece): WrittenObjects => ({
  bytes: new Uint8Array(Buffer.concat(parts, length)),
  entries: Uint32Array.from(entries.flatMap((e) => [e.object, e.kind, e.at, e.index])),
})

/** Appends what was written before; places in it move with it, numbers of streams stay. */
function appendWritten(file: FilePiece, { bytes, entries }: WrittenObjects): void {
  const start = file.length
  for (let i = 0; i < entries.length; i += 4) {
    const [object = 0, kind = 0, at = 0, index = 0] = entries.subarray(i, i + 4)
    const moved = kind === entryKinds.byOffset ? at + start : at
    file.entries.push({ object, kind, at: moved, index })
  }
  append(file, bytes)
}

/** What stands in a file beside the objects of its document. */
export type Beside = {
  readonly written: readonly WrittenObjects[]
  readonly texts: readonly NumberedText[]
}

/** The bytes of a document, its objects in compressed streams (ISO 32000-1, 7.5.7). */
export function saveDocument(
  document: PdfDocument,
  { written, texts }: Beside = { written: [], texts: [] },
): Uint8Array {
  const all = inside(document).objects
  const file = emptyPiece()
  // Bytes beyond those of plain text say that the file is none (ISO 32000-1, 7.5.2).
  append(file, '%PDF-1.7\n%\x81\x81\x81\x81\n\n')
  for (const piece of written) appendWritten(file, piece)
  const objects = [...all.entries()].flatMap(([number, object]) =>
    object === undefined ? [] : [[number, outside(object)] as const],
  )
  appendObjects(file, { objects, texts, streamNumber: (i) => all.length + i })
  const start = file.length
  appendTable(file, document)
  append(file, `startxref\n${start}\n%%EOF`)
  return new Uint8Array(Buffer.concat(file.parts, file.length))
}
