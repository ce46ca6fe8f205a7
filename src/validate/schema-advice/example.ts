import { entryAbout, factAt } from '../../model/entry-about.ts'
import { asSaid } from '../../model/quantity/as-said.ts'
import { parseQuantity } from '../../model/quantity/parse-quantity.ts'
import type { Path } from '../../read/read-yaml.ts'
import { choiceCalled, nearName } from './near-name.ts'
import { inside, isOwn, ownGroup } from './own-words.ts'
import { choicesOf, elementOf, isOptional, shapeOf, typeOf } from './schema-keys.ts'

const keysOf = (path: Path): readonly string[] => path.filter((p) => typeof p === 'string')

/** More entries than these make an example long. */
const mostShown = 3

/** Entries that show what a group is: those that it must have, else the first. */
function shown(shape: Readonly<Record<string, unknown>>, isGiven: boolean): readonly string[] {
  const keys = Object.keys(shape)
  // One value that somebody has typed is that of the first entry, or of straights and turns alike.
  if (isGiven && keys.every((key) => isOptional(shape[key])))
    return keys.includes('turns') ? ['straights', 'turns'] : keys.slice(0, 1)
  const needed = keys.filter((key) => !isOptional(shape[key]))
  return (needed.length > 0 ? needed : keys).slice(0, Math.max(mostShown, needed.length))
}

/** A choice: the one that somebody has typed, where it is one. */
function choiceIn(choices: readonly string[], given: string | undefined): string {
  const meant = given && (choiceCalled(given, choices) ?? nearName(given, choices))
  return meant ?? choices[0] ?? ''
}

/** A quantity that somebody has typed where a group was expected, in the form that is read. */
function quantityIn(given: string, example: string): string | undefined {
  const read = parseQuantity(asSaid(given))
  if (read.ok) return fits(read.quantity.dims, example) ? read.quantity.text : undefined
  // So many of them, with what is counted behind: `3 volunteers`.
  return /^\d+$/.test(example) ? /^\d+(?=\s+[a-z]|$)/i.exec(given)?.[0] : undefined
}

/**
 * A value such as stands at a path, as it is typed on one line.
 * @param given What somebody has typed where a group was expected: it stands in for all its
 *   quantities of that dimension. Facts of one place are made of it alone.
 */
export function exampleAt(schema: unknown, path: Path, given?: string): string {
  const type = typeOf(schema)
  if (type === 'object' && isOwn(path)) return ownGroup(schema, path, given ?? '')
  if (type === 'object') {
    const shape = shapeOf(schema)
    const parts = shown(shape, given !== undefined).map(
      (key) => `${key}: ${inside(exampleAt(shape[key], [...path, key], given))}`,
    )
    return `{ ${parts.join(', ')} }`
  }
  if (type === 'array') return `[${exampleAt(elementOf(schema), path, given)}]`
  if (type === 'enum') return choiceIn(choicesOf(schema), given)
  if (type === 'boolean') return 'true'
  const about = entryAbout(keysOf(path))
  const example = about?.example ?? 'some text'
  if (!factAt(keysOf(path)) || given === undefined) return example
  return quantityIn(given, example) ?? example
}

/** Whether something typed is of the same dimension as an example. */
function fits(dims: readonly number[], example: string): boolean {
  const read = parseQuantity(example)
  return read.ok && read.quantity.dims.every((d, i) => d === dims[i])
}
