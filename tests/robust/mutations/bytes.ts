import type { Chance } from '../chance.ts'
import type { Mutations } from './mutation.ts'

/** A stretch of a file, of at most so many bytes. */
function stretch(file: Buffer, chance: Chance, longest: number): readonly [number, number] {
  const from = chance.below(file.length + 1)
  return [from, Math.min(file.length, from + 1 + chance.below(longest))]
}

const odd = [0, 9, 10, 13, 0x1a, 0x1b, 0x22, 0x27, 0x3c, 0x7f, 0x80, 0xc0, 0xed, 0xf4, 0xff]

const marks = [
  [0xef, 0xbb, 0xbf],
  [0xff, 0xfe],
  [0x50, 0x4b, 3, 4],
  [0x25, 0x50, 0x44, 0x46],
  [0x7b, 0x5c, 0x72, 0x74, 0x66],
].map((bytes) => Buffer.from(bytes))

const spliced = (file: Buffer, from: number, to: number, between: Uint8Array): Buffer =>
  Buffer.concat([file.subarray(0, from), between, file.subarray(to)])

/** Changes of a file that knows nothing of what it says. */
export const byteMutations: Mutations = [
  // One bit is another.
  (file, chance) => {
    const changed = Buffer.from(file)
    const at = chance.below(Math.max(1, file.length))
    changed[at] = (changed[at] ?? 0) ^ (1 << chance.below(8))
    return changed
  },
  // One byte is another.
  (file, chance) => {
    const at = chance.below(file.length + 1)
    return spliced(file, at, at + 1, Buffer.from([chance.oneOf(odd)]))
  },
  // A byte more.
  (file, chance) => {
    const at = chance.below(file.length + 1)
    return spliced(file, at, at, Buffer.from([chance.oneOf(odd)]))
  },
  // A stretch is gone.
  (file, chance) => spliced(file, ...stretch(file, chance, 40), Buffer.alloc(0)),
  // A stretch stands twice.
  (file, chance) => {
    const [from, to] = stretch(file, chance, 200)
    return spliced(file, to, to, file.subarray(from, to))
  },
  // A stretch stands elsewhere too.
  (file, chance) => {
    const [from, to] = stretch(file, chance, 60)
    const at = chance.below(file.length + 1)
    return spliced(file, at, at, file.subarray(from, to))
  },
  // The rest was never written.
  (file, chance) => file.subarray(0, chance.below(file.length + 1)),
  // The mark of another kind of file at its head.
  (file, chance) => Buffer.concat([chance.oneOf(marks), file]),
  // Written by a program that thinks in pairs of bytes.
  (file) => Buffer.from(file.toString('utf8'), 'utf16le'),
]
