import { deflateSync } from 'node:zlib'
import type { PdfObject } from './kinds.ts'
import { inside, isA, nameOf, setValue, type Value, valueAt } from './values.ts'
import { type Move, objectText } from './write-object.ts'

/** Kinds of entries of a cross-reference stream (ISO 32000-1, 7.5.8.3). */
export const entryKinds = { free: 0, byOffset: 1, inStream: 2 } as const

/**
 * Where an object is found: at a place in the file, or in a stream by the stream's number and its
 * own place there.
 */
export type Entry = {
  readonly object: number
  /** One of `entryKinds`. */
  readonly kind: number
  readonly at: number
  readonly index: number
}

/** A piece of a file that grows, and where its objects begin in it. */
export type FilePiece = { readonly parts: Uint8Array[]; length: number; readonly entries: Entry[] }

export const emptyPiece = (): FilePiece => ({ parts: [], length: 0, entries: [] })

export function append(piece: FilePiece, part: Uint8Array | string): void {
  const bytes = typeof part === 'string' ? Buffer.from(part, 'latin1') : part
  piece.parts.push(bytes)
  piece.length += bytes.length
}

/** Appends an object that stands by itself: what it says before its bytes, and these, if any. */
function appendObject(piece: FilePiece, object: number, text: string, bytes?: Uint8Array): void {
  piece.entries.push({ object, kind: entryKinds.byOffset, at: piece.length, index: 0 })
  append(piece, `${object} 0 obj\n${text}`)
  if (bytes) {
    append(piece, '\nstream\n')
    append(piece, bytes)
    append(piece, '\nendstream')
  }
  append(piece, '\nendobj\n')
}

/** Appends a stream whose bytes are packed; Node's own program takes a fifth of the library's time. */
export function appendPacked(
  piece: FilePiece,
  object: number,
  about: string,
  bytes: Uint8Array,
): void {
  const packed = deflateSync(bytes)
  const text = `<<${about}/Filter/FlateDecode/Length ${packed.length}>>`
  appendObject(piece, object, text, packed)
}

/** An object as text under its number. */
export type NumberedText = readonly [object: number, text: string]

/** Objects that share one compressed stream. */
const mostInStream = 200

/** Appends objects in compressed streams behind lists of their numbers and places (ISO 32000-1, 7.5.7). */
function appendTexts(
  piece: FilePiece,
  texts: readonly NumberedText[],
  streamNumber: (i: number) => number,
): void {
  for (let at = 0; at < texts.length; at += mostInStream) {
    const stream = streamNumber(at / mostInStream)
    let [places, body] = ['', '']
    let index = 0
    for (const [object, text] of texts.slice(at, at + mostInStream)) {
      piece.entries.push({ object, kind: entryKinds.inStream, at: stream, index: index++ })
      places += `${object} ${body.length} `
      body += `${text}\n`
    }
    const about = `/Type/ObjStm/N ${index}/First ${places.length}`
    appendPacked(piece, stream, about, Buffer.from(places + body, 'latin1'))
  }
}

const [type, length] = [nameOf('Type'), nameOf('Length')]

const alone: ReadonlySet<Value | undefined> = new Set(['Catalog', 'Pages', 'Page'].map(nameOf))

/** Catalog and pages are left where every program finds them. */
const standsAlone = (value: Value): boolean =>
  isA(value, 'dictionary') && alone.has(valueAt(value, type))

export type ObjectsToWrite = {
  readonly objects: readonly (readonly [object: number, content: PdfObject])[]
  /** More of them, as text. */
  readonly texts: readonly NumberedText[]
  /** Number of the i-th stream in which small objects are packed. */
  readonly streamNumber: (i: number) => number
  readonly move?: Move
}

/** Appends objects to a piece of a file, those first that cannot stand in a stream. */
export function appendObjects(piece: FilePiece, all: ObjectsToWrite): void {
  const texts: NumberedText[] = []
  for (const [object, content] of all.objects) {
    const own: Value = inside(content)
    if (isA(own, 'stream')) {
      setValue(own.dictionary, length, own.bytes.length)
      appendObject(piece, object, objectText(own.dictionary, all.move), own.bytes)
    } else if (standsAlone(own)) appendObject(piece, object, objectText(own, all.move))
    else texts.push([object, objectText(own, all.move)])
  }
  appendTexts(piece, [...texts, ...all.texts], all.streamNumber)
}
