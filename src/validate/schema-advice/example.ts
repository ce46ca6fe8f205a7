import { factSpec, gearSpec } from '../../model/fact-spec.ts'
import { kindOf } from '../../model/quantity/kinds.ts'
import { parseQuantity } from '../../model/quantity/parse-quantity.ts'
import type { Path } from '../../read/read-yaml.ts'
import { choicesOf, elementOf, isOptional, shapeOf, typeOf } from './schema-keys.ts'

/** Examples of entries that are no quantities, by the last word of their path. */
const samples: Readonly<Record<string, string>> = {
  id: 'my-fair',
  name: 'a name',
  town: 'a town',
  date: '2027-08-03',
  'as-of': '2027-06-14',
  'first-post': '"1:00 PM"',
  phone: '555-0110',
  number: '"911"',
  latitude: '40.83',
  longitude: '-89.08',
  'home-bearing': '111',
  'time-zone': 'America/Chicago',
  currency: 'USD',
  language: 'en',
  revision: '1',
  races: '10',
  month: '7',
  by: 'a name',
  file: 'depths.csv',
  of: 'cushion.depth.found',
  value: '1 1/4 in',
  procedure: 'seal',
  'site-address': 'https://fair.example/track',
  way: '12 miles east, 20 minutes',
}

const spec = (path: Path) => {
  const keys = path.filter((p) => typeof p === 'string')
  return (
    factSpec(keys.join('.')) ??
    (keys[0] === 'equipment' ? gearSpec(String(keys.at(-1))) : undefined)
  )
}

/** A quantity such as stands at a path, as it is typed. */
function exampleQuantity(path: Path): string | undefined {
  const fact = spec(path)
  if (!fact) return undefined
  return fact.typical('stone-dust')?.us ?? kindOf(fact.kind).example
}

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
  const quantity = exampleQuantity(path)
  if (quantity === undefined) return samples[String(path.at(-1))] ?? 'some text'
  const typed = given === undefined ? undefined : parseQuantity(given)
  return typed?.ok && fits(typed.quantity.dims, quantity) ? typed.quantity.text : quantity
}

/** Whether something typed is of the same dimension as an example. */
function fits(dims: readonly number[], example: string): boolean {
  const read = parseQuantity(example)
  return read.ok && read.quantity.dims.every((d, i) => d === dims[i])
}
