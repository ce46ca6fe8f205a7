import { inflateSync } from 'node:zlib'
import { pass, type Reading, readObject, readValue, readWhole } from './read-values.ts'
import {
  type Dictionary,
  type Holder,
  isA,
  nameOf,
  type Objects,
  type Reference,
  type Value,
  valueAt,
} from './values.ts'
import { entryKinds } from './write-objects.ts'

// Reads whole files (ISO 32000-1, 7.5): with a table of all objects, as the browser writes them, or
// with streams of objects, as we do. Files that were changed by adding to their end, or are
// encrypted, never come here.

const names = {
  id: nameOf('ID'),
  index: nameOf('Index'),
  info: nameOf('Info'),
  first: nameOf('First'),
  length: nameOf('Length'),
  root: nameOf('Root'),
  widths: nameOf('W'),
}

/** Where objects stand: at a byte of the file, or in a stream of objects. */
type Places = {
  readonly byOffset: Map<number, number>
  readonly inStream: Map<number, number[]>
  readonly trailer: Dictionary
}

const numberIn = (dictionary: Dictionary, name: ReturnType<typeof nameOf>): number => {
  const value = valueAt(dictionary, name)
  return typeof value === 'number' ? value : 0
}

/** The table of a file that lists its objects line by line. */
function readTable(from: Reading): Places {
  const byOffset = new Map<number, number>()
  from.at += 'xref'.length
  for (pass(from); !from.text.startsWith('trailer', from.at); pass(from)) {
    const first = readWhole(from)
    pass(from)
    const count = readWhole(from)
    for (let i = 0; i < count; i++) {
      pass(from)
      const at = readWhole(from)
      pass(from)
      readWhole(from)
      pass(from)
      if (from.text.charAt(from.at++) === 'n') byOffset.set(first + i, at)
    }
  }
  from.at += 'trailer'.length
  pass(from)
  const trailer = readValue(from)
  if (!isA(trailer, 'dictionary')) throw new Error('a PDF without a trailer')
  return { byOffset, inStream: new Map(), trailer }
}

/** The table of a file that has packed it into a stream. */
function readPackedTable(from: Reading): Places {
  const stream = readObject(from, (d) => numberIn(d, names.length))
  if (!isA(stream, 'stream')) throw new Error('a PDF without a table of its objects')
  const { dictionary: trailer, bytes } = stream
  const table = inflateSync(bytes)
  const byOffset = new Map<number, number>()
  const inStream = new Map<number, number[]>()
  const widths = valueAt(trailer, names.widths)
  const runs = valueAt(trailer, names.index)
  if (!Array.isArray(widths) || !Array.isArray(runs)) throw new Error('a table without columns')
  const [kinds, places, indices] = widths.map(Number) as [number, number, number]
  let row = 0
  for (let i = 0; i < runs.length; i += 2)
    for (let n = 0; n < Number(runs[i + 1]); n++, row += kinds + places + indices) {
      const object = Number(runs[i]) + n
      const kind = table.readUIntBE(row, kinds)
      const at = table.readUIntBE(row + kinds, places)
      if (kind === entryKinds.byOffset) byOffset.set(object, at)
      else if (kind === entryKinds.inStream) inStream.set(at, [...(inStream.get(at) ?? []), object])
    }
  return { byOffset, inStream, trailer }
}

/** Puts the objects of a stream of objects into their places. */
function unpack(objects: Objects, container: Value | undefined): void {
  if (!isA(container, 'stream')) throw new Error('objects stand in what is no stream')
  const bytes = inflateSync(container.bytes)
  const text = bytes.toString('latin1')
  const from: Reading = { text, bytes, objects, at: 0 }
  const first = numberIn(container.dictionary, names.first)
  while (from.at < first) {
    pass(from)
    if (from.at >= first) break
    const object = readWhole(from)
    pass(from)
    const place = readWhole(from)
    objects[object] = readValue({ ...from, at: first + place })
  }
}

const referenceIn = (dictionary: Dictionary, name: ReturnType<typeof nameOf>) => {
  const value = valueAt(dictionary, name)
  return isA(value, 'reference') ? value : undefined
}

/** The length of a stream may stand in an object of its own. */
function lengthIn(from: Reading, byOffset: ReadonlyMap<number, number>) {
  return (dictionary: Dictionary): number => {
    const other = referenceIn(dictionary, names.length)
    const at = other && byOffset.get(other.number)
    if (at === undefined) return numberIn(dictionary, names.length)
    return Number(readObject({ ...from, at }, () => 0))
  }
}

/** @throws Error where something is not as it is written by the browser or by us. */
export function readFile(bytes: Uint8Array): Holder {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length)
  const text = buffer.toString('latin1')
  const objects: Objects = []
  const start = text.lastIndexOf('startxref') + 'startxref'.length
  const from: Reading = { text, bytes, objects, at: start }
  pass(from)
  from.at = readWhole(from)
  const isPlain = text.startsWith('xref', from.at)
  const { byOffset, inStream, trailer } = isPlain ? readTable(from) : readPackedTable(from)
  const lengthOf = lengthIn(from, byOffset)
  for (const [object, at] of byOffset) objects[object] = readObject({ ...from, at }, lengthOf)
  for (const container of inStream.keys()) {
    unpack(objects, objects[container])
    // What it held has been taken out of it.
    objects[container] = undefined
  }
  const root: Reference | undefined = referenceIn(trailer, names.root)
  const id = valueAt(trailer, names.id)
  if (!root) throw new Error('a PDF without a catalog')
  return {
    objects,
    root,
    info: referenceIn(trailer, names.info),
    id: Array.isArray(id) ? id : undefined,
  }
}
