import type { Path } from '../../read/read-yaml.ts'
import { exampleAt } from './example.ts'
import { choicesOf, schemaAt, shapeOf } from './schema-keys.ts'

/** A path in words: `entry 2 of "contacts"`, `"oval.width"`. */
function placeInWords(path: Path): string {
  const last = path.at(-1)
  const names = path.filter((step) => typeof step === 'string').join('.')
  return typeof last === 'number' ? `entry ${last + 1} of "${names}"` : `"${names}"`
}

/**
 * An entry that must be there and is not: where, and what to type.
 * @param isInBraces Whether its group stands in `{ }`.
 */
export function missing(root: object, path: Path, isInBraces: boolean) {
  const name = String(path.at(-1))
  const own = shapeOf(schemaAt(root, path.slice(0, -1)))[name]
  const choices = choicesOf(own)
  const entry = `${name}: ${exampleAt(own, path)}`
  const what = choices.length > 0 ? `"${name}:" with one of: ${choices.join(', ')}` : `"${entry}"`
  return {
    message:
      path.length > 1
        ? `"${name}" is missing in ${placeInWords(path.slice(0, -1))}`
        : `"${name}" is missing`,
    hint: isInBraces ? `add to what stands in { }: ${what}` : `add a line ${what}`,
  }
}
