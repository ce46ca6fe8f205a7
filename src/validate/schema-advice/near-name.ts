import otherNames from '../../../shared/other-names.json' with { type: 'json' }
import { nearest } from '../../model/closest.ts'

const entries = new Map<string, string>(Object.entries(otherNames.entries))
const choices = new Map<string, string>(Object.entries(otherNames.choices))

/** A name as keys of the file are written: small letters, hyphens between words. */
export const asKey = (name: string): string =>
  name
    .trim()
    .replace(/([a-z])([A-Z])/g, '$1-$2')
    .toLowerCase()
    .replace(/[\s_]+/g, '-')

/** The known name that a misspelt one, or one in another style, was meant to be. */
export function nearName(name: string, known: readonly string[]): string | undefined {
  const key = asKey(name)
  const singular = key.replace(/s$/, '')
  return (
    known.find((k) => k === key) ??
    known.find((k) => k.replace(/s$/, '') === singular) ??
    nearest(key, known)
  )
}

/** The path of the entry that people call by another name; '' where none is known. */
export function entryCalled(name: string): string {
  const key = asKey(name)
  return entries.get(key) ?? entries.get(key.replace(/s$/, '')) ?? ''
}

/** The choice that people call by another word. */
export function choiceCalled(name: string, known: readonly string[]): string | undefined {
  const key = asKey(name)
  const other = choices.get(key)
  return known.find((k) => k === key) ?? known.find((k) => k === other)
}
