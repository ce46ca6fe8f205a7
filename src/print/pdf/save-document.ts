import { deflateSync } from 'node:zlib'
import {
  PDFCatalog,
  type PDFContext,
  type PDFDict,
  PDFHeader,
  type PDFObject,
  PDFPageLeaf,
  PDFPageTree,
  PDFRawStream,
  PDFRef,
  PDFStream,
  PDFTrailer,
} from '@cantoo/pdf-lib'
import { nameAt } from './dictionaries.ts'
import type { PdfDocument } from './kinds.ts'
import { contextOf, nameOf, ours, theirs } from './library.ts'

// The library's own writer looks through the whole cross-reference table for the place of each
// entry: a binder with its tens of thousands of tags took it 5 s. This one lists the entries first
// and sorts them once. It writes every object once instead of measuring and then copying it, and
// packs with Node's own program, which takes a fifth of the time of the library's.

type Numbered = [PDFRef, PDFObject]

/** Kinds of entries of a cross-reference stream (ISO 32000-1, 7.5.8.3). */
const [free, byOffset, inStream] = [0, 1, 2] as const

/** Where an object is found: at a place in the file, or in a stream by its place there. */
type Entry = {
  readonly object: number
  readonly kind: typeof free | typeof byOffset | typeof inStream
  readonly at: number
  readonly index: number
}

/** Objects that share one compressed stream. */
const mostInStream = 200

/** Containers of the file that was opened: what they held has been taken out of them. */
const isContainer = (object: PDFObject): boolean =>
  object instanceof PDFRawStream &&
  /^(?:ObjStm|XRef)$/.test(nameAt(ours(object.dict), 'Type') ?? '')

/** Streams cannot stand in a stream; catalog and pages are left where every program finds them. */
const standsAlone = ([reference, object]: Numbered): boolean =>
  reference.generationNumber !== 0 ||
  object instanceof PDFStream ||
  object instanceof PDFCatalog ||
  object instanceof PDFPageTree ||
  object instanceof PDFPageLeaf

const chunks = <T>(list: readonly T[], size: number): T[][] =>
  Array.from({ length: Math.ceil(list.length / size) }, (_, i) =>
    list.slice(i * size, (i + 1) * size),
  )

/** What a stream says of itself, and its bytes packed. */
function packedStream(context: PDFContext, dict: PDFDict, bytes: Uint8Array): PDFRawStream {
  const packed = deflateSync(bytes)
  dict.set(nameOf('Filter'), nameOf('FlateDecode'))
  dict.set(nameOf('Length'), context.obj(packed.length))
  return PDFRawStream.of(dict, packed)
}

/** Objects behind a list of their numbers and places (ISO 32000-1, 7.5.7). */
function objectStream(context: PDFContext, objects: readonly Numbered[]): PDFRawStream {
  let [places, body] = ['', '']
  for (const [ref, object] of objects) {
    places += `${ref.objectNumber} ${body.length} `
    body += `${object}\n`
  }
  const about = { Type: 'ObjStm', N: objects.length, First: places.length }
  return packedStream(context, context.obj(about), Buffer.from(places + body, 'latin1'))
}

/** A file that grows, and where its objects begin. */
type File = { readonly parts: Uint8Array[]; length: number; readonly entries: Entry[] }

function append(file: File, part: Uint8Array | string): void {
  const bytes = typeof part === 'string' ? Buffer.from(part, 'latin1') : part
  file.parts.push(bytes)
  file.length += bytes.length
}

function appendObject(file: File, [ref, object]: Numbered): void {
  append(file, `${ref.objectNumber} ${ref.generationNumber} obj\n`)
  if (object instanceof PDFStream) {
    object.updateDict()
    append(file, `${object.dict}\nstream\n`)
    append(file, object.getContents())
    append(file, '\nendstream')
  } else append(file, String(object))
  append(file, '\nendobj\n\n')
}

function place(file: File, numbered: Numbered): void {
  const [{ objectNumber: object }] = numbered
  file.entries.push({ object, kind: byOffset, at: file.length, index: 0 })
  appendObject(file, numbered)
}

function placePacked(context: PDFContext, file: File, objects: readonly Numbered[]): void {
  const streams = chunks(objects, mostInStream).map((chunk, i): Numbered => {
    const stream = PDFRef.of(context.largestObjectNumber + 1 + i)
    for (const [index, [ref]] of chunk.entries())
      file.entries.push({
        object: ref.objectNumber,
        kind: inStream,
        at: stream.objectNumber,
        index,
      })
    return [stream, objectStream(context, chunk)]
  })
  for (const stream of streams) place(file, stream)
}

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

function crossReferences(context: PDFContext, file: File, size: number): PDFRawStream {
  const { Root, Info, ID } = context.trailerInfo
  const entries: readonly Entry[] = [
    { object: 0, kind: free, at: 0, index: 65535 },
    ...file.entries.sort((a, b) => a.object - b.object),
  ]
  const table = Buffer.alloc(entries.length * entryLength)
  for (const [i, { kind, at, index }] of entries.entries()) {
    table.writeUInt8(kind, i * entryLength)
    table.writeUInt32BE(at, i * entryLength + 1)
    table.writeUInt16BE(index, i * entryLength + 5)
  }
  const about = { Type: 'XRef', W: [...widths], Index: runsOf(entries), Size: size, Root, Info, ID }
  return packedStream(context, context.obj(about), table)
}

/** The bytes of a document, its objects in compressed streams (ISO 32000-1, 7.5.7). */
export async function saveDocument(document: PdfDocument): Promise<Uint8Array> {
  // Fonts that fields have asked for are written only now.
  await theirs(document).flush()
  const context = contextOf(document)
  const objects = context.enumerateIndirectObjects().filter(([, object]) => !isContainer(object))
  const file: File = { parts: [], length: 0, entries: [] }
  append(file, `${PDFHeader.forVersion(1, 7)}\n\n`)
  for (const object of objects.filter(standsAlone)) place(file, object)
  placePacked(
    context,
    file,
    objects.filter((o) => !standsAlone(o)),
  )
  const start = file.length
  const table = PDFRef.of(file.entries.reduce((most, e) => Math.max(most, e.object), 0) + 1)
  file.entries.push({ object: table.objectNumber, kind: byOffset, at: start, index: 0 })
  appendObject(file, [table, crossReferences(context, file, table.objectNumber + 1)])
  append(file, String(PDFTrailer.forLastCrossRefSectionOffset(start)))
  return new Uint8Array(Buffer.concat(file.parts, file.length))
}
