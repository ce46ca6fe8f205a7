import * as z from 'zod'
import { line } from '../text.ts'

/**
 * One entry for each name and no other: a misspelt name in the code does not compile, a missing or
 * unknown one in the file is a fault with its line.
 */
export const entries = <const K extends string>(...names: readonly K[]) =>
  Object.fromEntries(names.map((name) => [name, line])) as Record<K, typeof line>

/** A group of words with these names. */
export const group = <const K extends string>(...names: readonly K[]) =>
  z.strictObject(entries(...names))
