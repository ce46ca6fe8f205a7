import { degreesMeant } from '../../model/degrees.ts'
import { asSaid } from '../../model/quantity/as-said.ts'
import type { Path } from '../../read/read-yaml.ts'
import { datesIn } from './date-meant.ts'
import { exampleAt } from './example.ts'
import { choiceCalled, nearName } from './near-name.ts'
import { inside, isOwn, whatBelongs } from './own-words.ts'
import { choicesOf, elementOf, isOptional, schemaAt, shapeOf } from './schema-keys.ts'

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
  if (path.length === 0) return 'the file consists of lines such as "name: Our Fair"'
  if (isOwn(path) && plain(value) === '')
    return `below it, 2 spaces further in, stand its entries: ${Object.keys(shapeOf(schema)).join(', ')}`
  if (Array.isArray(value))
    return `delete the dash and the space behind it: what belongs to "${nameOf(path)}:" stands below it, 2 spaces further in`
  const example = exampleAt(schema, path, plain(value) || undefined)
  const empty = [...example.matchAll(/([\w-]+):(?=[,\s]*\}|, )/g)].map(([, key]) => `"${key}:"`)
  const rest =
    empty.length === 0 ? '' : `; what belongs behind ${empty.join(' and ')} you know alone`
  return `write ${inList ? '' : `${nameOf(path)}: `}${example}${rest}`
}

/** Parts of a line that was meant as a list, each as it is written in one. */
function partsOf(element: unknown, given: string): readonly string[] {
  const choices = choicesOf(element)
  if (isDateEntry(element)) return datesIn(given)
  return given
    .split(/\s*(?:[,;/&]|\band\b|\bor\b)\s*/)
    .filter((part) => part !== '')
    .map((part) =>
      choices.length === 0
        ? inside(part)
        : (choiceCalled(part, choices) ?? nearName(part, choices) ?? part),
    )
}

/** Whether a day stands in a place. */
function isDateEntry(schema: unknown): boolean {
  const check = schema as { safeParse?: (value: unknown) => { success: boolean } } | undefined
  const takes = (value: string): boolean => check?.safeParse?.(value).success === true
  return takes('2027-08-03') && !takes('some words')
}

function whereList(schema: unknown, path: Path, value: unknown): string {
  if (isObject(value))
    return 'it holds a list: begin each entry of it on a line of its own with "- "'
  const given = plain(value).replace(/^\[|\]$/g, '')
  const items = partsOf(elementOf(schema), given)
  if (items.length > 0) return `write ${nameOf(path)}: [${items.join(', ')}]`
  return isOwn(path)
    ? `write behind it, in [ ] and with commas between them, ${whatBelongs(path)}`
    : `write it as in ${nameOf(path)}: ${exampleAt(schema, path)}`
}

const yes = /^(y|yes|on|ja|oui|x)$/i
const no = /^(n|no|off|none|nein|non)$/i

function whereBoolean(path: Path, value: unknown): string {
  const given = plain(value)
  const meant = yes.test(given) ? 'true' : no.test(given) ? 'false' : undefined
  return meant ? `write ${nameOf(path)}: ${meant}` : 'write true or false'
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']

function whereNumber(schema: unknown, path: Path, value: unknown): string {
  const given = plain(value)
  const name = nameOf(path)
  const month = months.indexOf(given.slice(0, 3).toLowerCase()) + 1
  if (name === 'month' && month > 0) return `write its number: month: ${month}`
  if (/itude$/.test(name)) {
    const degrees = degreesMeant(given)
    return Number.isFinite(Number(degrees)) && degrees !== ''
      ? `write digits alone: ${name}: ${degrees}; south and west are negative`
      : 'write degrees in digits alone, with a point; south and west are negative'
  }
  const [digits] = /-?\d+(?:[.,]\d+)?/.exec(asSaid(given)) ?? []
  if (digits === undefined)
    return isOwn(path)
      ? 'write digits alone'
      : `write digits alone, such as ${name}: ${exampleAt(schema, path)}`
  return `write digits alone: ${name}: ${digits.replace(',', '.')}`
}

/** Whether nothing works without what stands at a path. */
const isNeeded = (root: object, path: Path): boolean => {
  const name = path.at(-1)
  const shape = shapeOf(schemaAt(root, path.slice(0, -1)))
  return typeof name === 'string' && name in shape && !isOptional(shape[name])
}

function whereText(root: object, path: Path, value: unknown, raw: string): string {
  if (Array.isArray(value) || isObject(value)) return 'write one text on one line'
  if (value === null || value === undefined)
    return `write behind it the ${whatBelongs(path)}${isNeeded(root, path) ? '' : '; or delete the line'}`
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
            : whereText(root, path, value, raw)
  return {
    message: empty
      ? `nothing stands behind "${nameOf(path)}:"`
      : `${shown(value)} where ${expectedIn(type)} was expected`,
    hint:
      empty && type !== 'string' && !isNeeded(root, path) ? `${hint}; or delete the line` : hint,
  }
}

/** A value that is none of the choices. */
export function wrongChoice(choices: readonly string[], value: unknown, inList: boolean): Advice {
  const given = plain(value)
  const message = `${shown(value)} is not one of the choices`
  const meant =
    given === '' ? undefined : (choiceCalled(given, choices) ?? nearName(given, choices))
  const list = `expected one of: ${choices.join(', ')}`
  if (meant !== undefined) return { message, hint: `did you mean "${meant}"? ${list}` }
  const parts = given
    .split(/\s*(?:[,;/&]|\band\b|\bor\b)\s*/)
    .map((part) => choiceCalled(part, choices) ?? nearName(part, choices))
  const known = parts.filter((part) => part !== undefined)
  return inList && parts.length > 1 && known.length === parts.length
    ? { message, hint: `write ${known.join(', ')}; ${list}` }
    : { message, hint: list }
}
