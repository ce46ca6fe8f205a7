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

/**
 * Every string that means something to readers, in the order of the data. What does not fit the
 * schema is passed over; it has been reported elsewhere.
 * @param schema Says of each string what it is.
 * @param value Data as it was read.
 * @param path Where the data stands in its file.
 */
export function textsIn(schema: unknown, value: unknown, path: Path = []): ItemText[] {
  if (schema instanceof z.ZodOptional) return textsIn(schema.unwrap(), value, path)
  if (schema instanceof z.ZodUnion)
    return textsIn(
      schema.options.find((option) => fits(option, value)),
      value,
      path,
    )
  if (schema instanceof z.ZodString) {
    const is = meanings.get(schema)?.is
    const key = path.findLast((step) => typeof step === 'string') ?? ''
    return is && typeof value === 'string' ? [{ is, text: value, key: String(key), path }] : []
  }
  if (schema instanceof z.ZodArray && Array.isArray(value))
    return value.flatMap((v, i) => textsIn(schema.element, v, [...path, i]))
  if (!isGroup(value)) return []
  if (schema instanceof z.ZodRecord)
    return Object.entries(value).flatMap(([k, v]) => textsIn(schema.valueType, v, [...path, k]))
  if (schema instanceof z.ZodObject)
    return Object.entries(value).flatMap(([k, v]) => textsIn(schema.shape[k], v, [...path, k]))
  return []
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
