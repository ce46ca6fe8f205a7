import table from '../../shared/usual.json' with { type: 'json' }
import type { Capability } from './capability.ts'

/** From the least to the most that is usual, as people write it. */
export type UsualRange = readonly [string, string]

const rangeIn = (rows: unknown, key: string): UsualRange | undefined =>
  (rows as Readonly<Record<string, UsualRange>>)[key]

/** What is usual of a fact, where anything is. */
export const usualOfFact = (path: string): UsualRange | undefined => rangeIn(table.facts, path)

/** What is usual of a machine's field for each of the works that it does. */
export function usualOfMachine(field: string, can: readonly Capability[]): readonly UsualRange[] {
  const works = table['by work'] as Readonly<Partial<Record<Capability, unknown>>>
  const own = can
    .map((work) => rangeIn(works[work] ?? {}, field))
    .filter((range) => range !== undefined)
  const any = rangeIn(table.machines, field)
  return own.length > 0 ? own : any ? [any] : []
}
