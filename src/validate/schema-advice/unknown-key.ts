import type { Path } from '../../read/read-yaml.ts'
import { exampleAt } from './example.ts'
import { asKey, entryCalled, nearName } from './near-name.ts'
import { type Group, groupsOf, schemaAt, shapeOf, typeOf } from './schema-keys.ts'

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** What is said of an entry that a group does not have. */
type Advice = { readonly message: string; readonly hint: string }

/** Where an unknown entry stands. */
type Unknown = {
  readonly key: string
  /** The schema of the whole file. */
  readonly schema: object
  /** Path of the group, and what stands there. */
  readonly at: Path
  readonly data: unknown
}

/**
 * The empty group beside an entry that has such an entry: its indent was lost, so that it stands
 * beside the group instead of in it.
 */
export function emptyGroupFor({ key, schema, at, data }: Unknown): string | undefined {
  const shape = shapeOf(schemaAt(schema, at))
  return Object.entries(isObject(data) ? data : {}).find(
    ([name, value]) => value === null && Object.hasOwn(shapeOf(shape[name]), key),
  )?.[0]
}

/** A path of the file in words: `"station" of "marks" under "oval"`. */
function whereIs(path: readonly string[], listed: boolean): string {
  const [last = '', ...rest] = path.toReversed()
  const of = listed ? ' (an entry of its list)' : ''
  return rest.length === 0
    ? `"${last}:" at the margin${of}`
    : `"${last}:" under "${rest.toReversed().join('.')}"${of}`
}

const isWithin = (path: readonly string[], at: Path): boolean => {
  const here = at.filter((p) => typeof p === 'string')
  return path.length === here.length && path.every((p, i) => p === here[i])
}

/** Groups elsewhere that have an entry of this name. */
function elsewhere(key: string, { schema, at }: Unknown): readonly Group[] {
  const found = groupsOf(schema).filter((g) => g.keys.includes(key) && !isWithin(g.path, at))
  // What every second list has ("name", "date") says nothing of where it belongs.
  return found.length <= 4 ? found : []
}

/** The entry of the same group that a name was meant for, by spelling or by meaning. */
export function nameMeant(key: string, at: Path, allowed: readonly string[]): string | undefined {
  const near = nearName(key, allowed)
  if (near !== undefined) return near
  const path = entryCalled(key).split('.')
  const last = path.at(-1) ?? ''
  const here = at.filter((p) => typeof p === 'string').join('.')
  return allowed.includes(last) && (here !== '' || path.length === 1) ? last : undefined
}

/** The name that people gave to an entry that stands elsewhere. */
function otherName(unknown: Unknown): string | undefined {
  const target = entryCalled(unknown.key)
  if (target === '') return undefined
  const path = target.split('.')
  const here = unknown.at.filter((p) => typeof p === 'string').join('.')
  if (here !== '' && path.length > 1 && !target.startsWith(`${here}.`)) return undefined
  return `it is called ${whereIs(path, false)}`
}

/** An entry with its value run together: `kind:gate`. */
function runTogether(key: string, allowed: readonly string[]): string | undefined {
  const [, name = '', value = ''] = /^([\w-]+):(.+)$/.exec(key) ?? []
  return name !== '' && nearName(name, allowed) !== undefined
    ? `write ${name}: ${value}`
    : undefined
}

/** A word for a group, with the words of one of its entries: `track-width`. */
function joined(key: string, unknown: Unknown): string | undefined {
  const found = groupsOf(unknown.schema).flatMap((g) =>
    g.keys
      .filter((k) => g.path.length > 0 && asKey(key) === `${g.path.at(-1)}-${k}`)
      .map((k) => [...g.path, k]),
  )[0]
  return found && `it is called ${whereIs(found, false)}`
}

/** The usual slip in `{ station: 1,700 ft }`: inside braces the comma ends the entry. */
function cutNumber({ key, data }: Unknown): string {
  const names = Object.keys(isObject(data) ? data : {})
  const before = names[names.indexOf(key) - 1] ?? ''
  const begun = isObject(data) ? data[before] : undefined
  return typeof begun === 'number'
    ? `write ${before}: "${begun},${key.replace(/"$/, '')}"; inside { } a comma ends an entry`
    : 'inside { } a comma ends an entry: put the value in quotes'
}

/** A value behind another name of a group: what it looks like as that group. */
function groupMeant({ key, schema, at, data }: Unknown, meant: string): string | undefined {
  const inner = schemaAt(schema, [...at, meant])
  const value = isObject(data) ? data[key] : undefined
  if (typeOf(inner) !== 'object' || (typeof value !== 'string' && typeof value !== 'number'))
    return undefined
  return `write ${meant}: ${exampleAt(inner, [...at, meant], String(value))}`
}

function hintFor(unknown: Unknown, allowed: readonly string[]): string {
  const { key } = unknown
  if (/^\d/.test(key) && unknown.at.length > 0) return cutNumber(unknown)
  const together = runTogether(key, allowed)
  if (together !== undefined) return together
  const meant = nameMeant(key, unknown.at, allowed)
  if (meant !== undefined) return groupMeant(unknown, meant) ?? `did you mean "${meant}"?`
  const other = otherName(unknown) ?? joined(key, unknown)
  if (other !== undefined) return other
  const groups = elsewhere(asKey(key), unknown)
  if (groups.length > 0)
    return `it belongs elsewhere: ${groups.map((g) => whereIs([...g.path, asKey(key)], g.listed)).join(', or ')}`
  const far = groupsOf(unknown.schema).flatMap((g) => {
    const name = g.path.length > 0 && key.length > 4 ? nearName(key, g.keys) : undefined
    return name === undefined ? [] : [[...g.path, name]]
  })[0]
  if (far) return `did you mean ${whereIs(far, false)}?`
  return `known here: ${allowed.join(', ')}; a remark begins with #`
}

/** What is said of an unknown entry: what it was meant to be, and where that belongs. */
export function unknownKey(unknown: Unknown): Advice {
  const { key, schema, at } = unknown
  const group = emptyGroupFor(unknown)
  if (group !== undefined)
    return {
      message: `"${key}" belongs under "${group}"`,
      hint: `begin the line with 2 spaces more than that of "${group}"`,
    }
  const allowed = Object.keys(shapeOf(schemaAt(schema, at)))
  return {
    message: `unknown entry "${key}"`,
    hint: allowed.length === 0 ? 'there is no such entry' : hintFor(unknown, allowed),
  }
}
