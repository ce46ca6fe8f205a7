import { entryAbout, factAt } from '../../model/entry-about.ts'
import { parseQuantity } from '../../model/quantity/parse-quantity.ts'
import type { Path } from '../../read/read-yaml.ts'
import { choicesOf, elementOf, isOptional, shapeOf, typeOf } from './schema-keys.ts'

const keysOf = (path: Path): readonly string[] => path.filter((p) => typeof p === 'string')

/** Whether a text needs quotes inside { }. */
const quotedInside = (text: string): string => (/[,[\]{}]|: /.test(text) ? `"${text}"` : text)

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

/**
 * A value such as stands at a path, as it is typed on one line.
 * @param given What somebody has typed where a group was expected: it stands in for all its
 *   quantities of that dimension.
 */
export function exampleAt(schema: unknown, path: Path, given?: string): string {
  const type = typeOf(schema)
  if (type === 'object') {
    const shape = shapeOf(schema)
    const parts = shown(shape, given !== undefined).map(
      (key) => `${key}: ${quotedInside(exampleAt(shape[key], [...path, key], given))}`,
    )
    return `{ ${parts.join(', ')} }`
  }
  if (type === 'array') return `[${exampleAt(elementOf(schema), path, given)}]`
  if (type === 'enum') return choicesOf(schema)[0] ?? ''
  if (type === 'boolean') return 'true'
  const about = entryAbout(keysOf(path))
  const quantity = about?.example ?? 'some text'
  if (!factAt(keysOf(path))) return quantity
  const typed = given === undefined ? undefined : parseQuantity(given)
  return typed?.ok && fits(typed.quantity.dims, quantity) ? typed.quantity.text : quantity
}

/** Whether something typed is of the same dimension as an example. */
function fits(dims: readonly number[], example: string): boolean {
  const read = parseQuantity(example)
  return read.ok && read.quantity.dims.every((d, i) => d === dims[i])
}
