import type { Path } from '../read/read-yaml.ts'
import type { Sourced } from './check-library.ts'
import { notText } from './check-text.ts'

/** A text of an item, with the name of the entry that it stands under. */
export type ItemText = { readonly text: string; readonly key: string; readonly path: Path }

function walk(value: unknown, path: Path, key: string): ItemText[] {
  if (typeof value === 'string')
    return notText.has(key) || key === 'figures' || key === 'needs'
      ? []
      : [{ text: value, key, path }]
  if (Array.isArray(value)) return value.flatMap((v, i) => walk(v, [...path, i], key))
  if (typeof value !== 'object' || value === null || key === 'when') return []
  return Object.entries(value).flatMap(([k, v]) => walk(v, [...path, k], k))
}

/** Every text that readers will see of an item of the library. */
export const textsOf = (item: Sourced<unknown>): readonly ItemText[] =>
  walk(item.value, item.path, '')

/** A text as it is read: figures become a word, links their words, marks go. */
export const plainText = (text: string): string =>
  text
    .replace(/\{[^}]*\}/g, 'two feet')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[*_`“”]/g, '')
