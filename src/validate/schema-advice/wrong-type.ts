import type { Path } from '../../read/read-yaml.ts'
import { exampleAt } from './example.ts'
import { choiceCalled, nearName } from './near-name.ts'
import { schemaAt } from './schema-keys.ts'

/** What is said of a value of the wrong kind. */
type Advice = { readonly message: string; readonly hint: string }

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** A value as it can be named in a message. */
export const shown = (value: unknown): string =>
  value === null || value === undefined
    ? 'nothing'
    : Array.isArray(value)
      ? 'a list'
      : typeof value === 'object'
        ? 'a group of entries'
        : typeof value === 'number' && !Number.isFinite(value)
          ? 'what is no number that can be counted'
          : `"${String(value).slice(0, 60)}"`

const wanted: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a group of entries',
  record: 'a group of entries',
}

/** What is expected in a place, in words. */
const expectedIn = (type: string): string => wanted[type] ?? type

export const nameOf = (path: Path): string =>
  String(path.findLast((step) => typeof step === 'string') ?? 'this')

/** A value as it could be typed elsewhere; nothing for what says nothing. */
const plain = (value: unknown): string =>
  value === null || value === undefined || (typeof value === 'number' && !Number.isFinite(value))
    ? ''
    : String(value)

function whereGroup(schema: unknown, path: Path, value: unknown): string {
  const inList = typeof path.at(-1) === 'number'
  const example = exampleAt(schema, path, plain(value) || undefined)
  if (path.length === 0) return 'the file consists of lines such as "name: Our Fair"'
  if (Array.isArray(value)) return `write it without the dash, as "${nameOf(path)}: ${example}"`
  return inList ? `write "- ${example}"` : `write it as "${nameOf(path)}: ${example}"`
}

function whereList(schema: unknown, path: Path, value: unknown): string {
  if (isObject(value))
    return 'it holds a list: begin each entry of it on a line of its own with "- "'
  const given = plain(value).replace(/^\[|\]$/g, '')
  const items = given.split(/\s*(?:,|;|\band\b)\s*/).filter((s) => s !== '')
  const list = items.length > 0 ? `[${items.join(', ')}]` : exampleAt(schema, path)
  return `write it as "${nameOf(path)}: ${list.length < 80 ? list : exampleAt(schema, path)}"`
}

const yes = /^(y|yes|on|ja|oui|x)$/i
const no = /^(n|no|off|none|nein|non)$/i

function whereBoolean(path: Path, value: unknown): string {
  const given = plain(value)
  const meant = yes.test(given) ? 'true' : no.test(given) ? 'false' : undefined
  return meant ? `write "${nameOf(path)}: ${meant}"` : 'write true or false'
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']

function whereNumber(schema: unknown, path: Path, value: unknown): string {
  const given = plain(value)
  const name = nameOf(path)
  const month = months.indexOf(given.slice(0, 3).toLowerCase()) + 1
  if (name === 'month' && month > 0) return `write its number: "month: ${month}"`
  const [digits] = /-?\d+(?:[.,]\d+)?/.exec(given) ?? []
  if (digits === undefined)
    return `write digits alone, such as "${name}: ${exampleAt(schema, path)}"`
  const southWest = /[SW]\b/i.test(given.replace(digits, '')) && !digits.startsWith('-')
  return `write digits alone: "${name}: ${southWest ? '-' : ''}${digits.replace(',', '.')}"${/latitude|longitude/.test(name) ? '; south and west are negative' : ''}`
}

function whereText(path: Path, value: unknown, raw: string): string {
  if (Array.isArray(value) || isObject(value)) return 'write one text on one line'
  if (value === null || value === undefined) return 'write some text, or delete the line'
  return `put it in quotes: ${typeof path.at(-1) === 'number' ? '' : `${nameOf(path)}: `}"${raw}"`
}

/**
 * A value of the wrong kind: what to type instead.
 * @param type What was expected, in a word of the schemas' library.
 * @param raw The value as it stands in the file.
 */
export function wrongType(
  root: object,
  path: Path,
  { value, raw }: { readonly value: unknown; readonly raw: string },
  type: string,
): Advice {
  const schema = schemaAt(root, path)
  const empty = value === null || value === undefined
  const hint =
    type === 'object' || type === 'record'
      ? whereGroup(schema, path, value)
      : type === 'array'
        ? whereList(schema, path, value)
        : type === 'boolean'
          ? whereBoolean(path, value)
          : type === 'number' || type === 'int'
            ? whereNumber(schema, path, value)
            : whereText(path, value, raw)
  return {
    message: empty
      ? `nothing stands behind "${nameOf(path)}:"`
      : `${shown(value)} where ${expectedIn(type)} was expected`,
    hint: empty && type !== 'string' ? `${hint}, or delete the line` : hint,
  }
}

/** A value that is none of the choices. */
export function wrongChoice(choices: readonly string[], value: unknown): Advice {
  const given = plain(value)
  const meant =
    given === '' ? undefined : (choiceCalled(given, choices) ?? nearName(given, choices))
  const list = `expected one of: ${choices.join(', ')}`
  return {
    message: `${shown(value)} is not one of the choices`,
    hint: meant === undefined ? list : `did you mean "${meant}"? ${list}`,
  }
}
