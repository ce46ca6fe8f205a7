import * as z from 'zod'
import { factPaths } from '../../model/fact-spec.ts'
import { quantity } from './quantity.ts'

/**
 * One quantity field for each fact directly under a path: under `cushion.depth` stand `target`,
 * `found` …
 */
export function factsUnder(prefix: string) {
  const names = factPaths
    .filter((p) => p.startsWith(`${prefix}.`) && !p.slice(prefix.length + 1).includes('.'))
    .map((p) => p.slice(prefix.length + 1))
  return Object.fromEntries(names.map((name) => [name, quantity(`${prefix}.${name}`)]))
}

/** A group of entries of the facility file: its facts, and what else stands there. */
export const group = (prefix: string, inner: Readonly<Record<string, z.ZodType>> = {}) =>
  z.strictObject({ ...factsUnder(prefix), ...inner }).optional()
