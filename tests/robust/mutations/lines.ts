import type { Chance } from '../chance.ts'
import { type Mutations, ofText } from './mutation.ts'

/** A change of the lines of a text. */
const lines = (change: (all: readonly string[], chance: Chance) => readonly string[]) =>
  ofText((text, chance) => change(text.split('\n'), chance).join('\n'))

/** The lines with another list of them in the place of one. */
const at = (all: readonly string[], i: number, ...instead: readonly string[]): readonly string[] =>
  all.toSpliced(i, 1, ...instead)

/** Slips of an editor. */
export const lineMutations: Mutations = [
  // A line is gone.
  lines((all, chance) => at(all, chance.below(all.length))),
  // A line stands twice.
  lines((all, chance) => {
    const i = chance.below(all.length)
    return at(all, i, all[i] ?? '', all[i] ?? '')
  }),
  // Two lines have changed places.
  lines((all, chance) => {
    const [i, j] = [chance.below(all.length), chance.below(all.length)]
    const changed = [...all]
    changed[i] = all[j] ?? ''
    changed[j] = all[i] ?? ''
    return changed
  }),
  // A line stands further in, or further out.
  lines((all, chance) => {
    const i = chance.below(all.length)
    const line = all[i] ?? ''
    return at(all, i, chance.happens(0.5) ? `  ${line}` : line.replace(/^ {1,2}/, ''))
  }),
  // A tab in front.
  lines((all, chance) => {
    const i = chance.below(all.length)
    return at(all, i, `\t${all[i] ?? ''}`)
  }),
  // Two lines are one.
  lines((all, chance) => {
    const i = chance.below(all.length)
    return all.toSpliced(i, 2, `${all[i] ?? ''}${all[i + 1] ?? ''}`)
  }),
  // One line is two.
  lines((all, chance) => {
    const i = chance.below(all.length)
    const line = all[i] ?? ''
    const cut = chance.below(line.length + 1)
    return at(all, i, line.slice(0, cut), line.slice(cut))
  }),
  // A block stands elsewhere.
  lines((all, chance) => {
    const i = chance.below(all.length)
    const block = all.slice(i, i + 1 + chance.below(6))
    const rest = all.toSpliced(i, block.length)
    return rest.toSpliced(chance.below(rest.length + 1), 0, ...block)
  }),
  // A line stands many times.
  lines((all, chance) => {
    const i = chance.below(all.length)
    return at(all, i, ...Array.from({ length: 2 + chance.below(300) }, () => all[i] ?? ''))
  }),
  // Other ends of lines.
  ofText((text, chance) => text.replaceAll('\n', chance.oneOf(['\r\n', '\r', '\u2028', '\n\n']))),
]
