import * as z from 'zod'
import type { Path } from '../read/read-yaml.ts'
import type { Sourced } from './check-library.ts'
import { meanings } from './schemas/text.ts'

/** A string of the library that means something to readers, with the entry that it stands under. */
export type ItemText = {
  readonly is: 'words' | 'quantity'
  readonly text: string
  readonly key: string
  readonly path: Path
  /**
   * Where the same text stands in the file of another language: as `path`, but entries of a list
   * that have ids are found by these.
   */
  readonly address: Path
}

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** Whether a value is of the sort that a schema describes, whatever is inside it. */
const fits = (schema: unknown, value: unknown): boolean =>
  schema instanceof z.ZodString
    ? typeof value === 'string'
    : schema instanceof z.ZodArray
      ? Array.isArray(value)
      : isGroup(value)

/** The name of an entry of a list: its id where all entries have one, else its place. */
function entryName(element: unknown, value: unknown, index: number): string | number {
  const hasId = element instanceof z.ZodObject && element.shape['id'] instanceof z.ZodString
  const id = hasId && isGroup(value) ? value['id'] : undefined
  return typeof id === 'string' ? id : index
}

/** The last named step of a path: what a text is called. */
const keyOf = (path: Path): string => String(path.findLast((s) => typeof s === 'string') ?? '')

/**
 * Every string that means something to readers, in the order of the data. What does not fit the
 * schema is passed over; it has been reported elsewhere.
 * @param schema Says of each string what it is.
 * @param value Data as it was read.
 * @param path Where the data stands in its file.
 * @param address Where it stands in the file of another language.
 */
export function textsIn(
  schema: unknown,
  value: unknown,
  path: Path = [],
  address: Path = path,
): ItemText[] {
  const inside = (part: unknown, entry: unknown, step: string | number, name = step) =>
    textsIn(part, entry, [...path, step], [...address, name])
  if (schema instanceof z.ZodOptional) return textsIn(schema.unwrap(), value, path, address)
  if (schema instanceof z.ZodUnion) {
    const option = schema.options.find((o) => fits(o, value))
    return textsIn(option, value, path, address)
  }
  if (schema instanceof z.ZodString) {
    const is = meanings.get(schema)?.is
    return is && typeof value === 'string'
      ? [{ is, text: value, key: keyOf(path), path, address }]
      : []
  }
  if (schema instanceof z.ZodArray && Array.isArray(value)) {
    const { element } = schema
    return value.flatMap((v, i) => inside(element, v, i, entryName(element, v, i)))
  }
  if (!isGroup(value)) return []
  const entries = Object.entries(value)
  if (schema instanceof z.ZodRecord)
    return entries.flatMap(([key, v]) => inside(schema.valueType, v, key))
  return schema instanceof z.ZodObject
    ? entries.flatMap(([key, v]) => inside(schema.shape[key], v, key))
    : []
}

/** Every text that readers will see of an item of the library. */
export const textsOf = (item: Sourced<unknown>): readonly ItemText[] =>
  textsIn(item.schema, item.value, item.path).filter((t) => t.is === 'words')

/** A text as it is read: figures become a word, links their words, marks go. */
export const plainText = (text: string): string =>
  text
    .replace(/\{[^}]*\}/g, 'two feet')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[*_`“”]/g, '')
