import type { Sourced } from '../../validate/check-library.ts'
import type { WorksheetFile } from '../../validate/schemas/worksheets.ts'
import type { Calculation } from '../calculation.ts'
import { looseCalculations } from './loose.ts'
import { reasons } from './reasons.ts'
import { useTable } from './use-table.ts'

/** A file of content/worksheets. */
export type WordFile = Sourced<WorksheetFile>

/** Groups of entries of which each has the id of something declared. */
export type WordGroup = 'worksheets' | 'calculations' | 'reasons'

/** What uses, calculations and reasons there are, which words must name. */
export type DeclaredWorksheets = {
  /** Calculations by the id of the use that may show them, in the order of the table. */
  readonly uses: Readonly<Record<string, readonly Calculation[]>>
  /** Calculations that no use shows. */
  readonly loose: readonly Calculation[]
  readonly reasons: readonly string[]
}

/** What is declared in this program. */
export const declaredWorksheets: DeclaredWorksheets = {
  uses: useTable,
  loose: looseCalculations,
  reasons,
}

/** All calculations, by id. */
export const calculationsOf = ({
  uses,
  loose,
}: DeclaredWorksheets): ReadonlyMap<string, Calculation> =>
  new Map([...Object.values(uses).flat(), ...loose].map((c) => [c.id, c]))

/** Groups of a calculation's words, each entry named after something that it declares. */
export const calculationGroups = ['inputs', 'outputs', 'refusals', 'terms', 'steps'] as const

/** The names that a calculation declares in a group. */
export const namesIn = (
  calculation: Calculation,
  group: (typeof calculationGroups)[number],
): readonly string[] =>
  group === 'refusals' || group === 'terms'
    ? (calculation[group] ?? [])
    : Object.keys(calculation[group] ?? {})
