import type { Path } from '../../read/read-yaml.ts'
import { exampleAt } from './example.ts'
import { isOwn, whatBelongs } from './own-words.ts'
import { choicesOf, elementOf, schemaAt, shapeOf, typeOf } from './schema-keys.ts'

/** A path in words: `entry 2 of "contacts"`, `"oval.width"`. */
function placeInWords(path: Path): string {
  const last = path.at(-1)
  const names = path.filter((step) => typeof step === 'string').join('.')
  return typeof last === 'number' ? `entry ${last + 1} of "${names}"` : `"${names}"`
}

/** What to type for an entry: its choices, what belongs there, or an example. */
function whatToType(own: unknown, path: Path): string {
  const name = String(path.at(-1))
  const choices = choicesOf(own)
  if (choices.length > 0) return `"${name}:" with one of: ${choices.join(', ')}`
  const several = typeOf(own) === 'array' ? choicesOf(elementOf(own)) : []
  if (several.length > 0)
    return `"${name}:" with one or more of these in [ ]: ${several.join(', ')}`
  if (isOwn(path)) return `"${name}:" and behind it the ${whatBelongs(path)}`
  return `"${name}:" and behind it the value, such as ${exampleAt(own, path)}`
}

/**
 * An entry that must be there and is not: where, and what to type.
 * @param isInBraces Whether its group stands in `{ }`.
 */
export function missing(root: object, path: Path, isInBraces: boolean) {
  const name = String(path.at(-1))
  const what = whatToType(shapeOf(schemaAt(root, path.slice(0, -1)))[name], path)
  return {
    message:
      path.length > 1
        ? `"${name}" is missing in ${placeInWords(path.slice(0, -1))}`
        : `"${name}" is missing`,
    hint: isInBraces ? `add to what stands in { }: ${what}` : `add a line ${what}`,
  }
}
