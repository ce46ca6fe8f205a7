import type { Problem } from '../../model/problem.ts'
import { asKey, entryCalled } from '../../validate/schema-advice/near-name.ts'
import { type CellStyles, lostZero, readValue } from './cell-values.ts'
import type { Field } from './fields.ts'
import { type FoundSheet, type FoundValue, nothingFound } from './found.ts'
import type { Grid, GridCell } from './grid.ts'

/** Entries by what they may be called: path, label, other names of their path. */
type Called = ReadonlyMap<string, Field>

const called = new WeakMap<readonly Field[], { readonly paths: Called; readonly labels: Called }>()

function calledIn(fields: readonly Field[]) {
  const known = called.get(fields)
  if (known) return known
  const byLast = (nameOf: (field: Field) => string): Called =>
    new Map(fields.toReversed().map((field) => [nameOf(field), field]))
  const made = {
    paths: byLast(({ path }) => path.join('.')),
    labels: byLast(({ about }) => asKey(about.label)),
  }
  called.set(fields, made)
  return made
}

/** The entry that a text names: by its path, by its label, or as people call it. */
export function fieldNamed(text: string, fields: readonly Field[]): Field | undefined {
  const { paths, labels } = calledIn(fields)
  return paths.get(text.trim()) ?? labels.get(asKey(text)) ?? paths.get(entryCalled(text))
}

/** A line of a sheet of entries: which one it is, and the column of its answer. */
type Line = { readonly field: Field; readonly answer: number }

/**
 * In the workbook to fill in the path of an entry stands behind its answer; in other tables its name
 * stands before it.
 */
function lineOf(row: readonly GridCell[], fields: readonly Field[]): Line | undefined {
  const { paths } = calledIn(fields)
  const path = row.find((cell) => cell.column > 2 && paths.has(cell.text))
  const [first] = row
  const field = fieldNamed(path?.text ?? first?.text ?? '', fields)
  return field && { field, answer: path ? 2 : (first?.column ?? 1) + 1 }
}

/** Whether a row asks for an entry. */
export const isAnswered = (row: readonly GridCell[], fields: readonly Field[]): boolean =>
  lineOf(row, fields) !== undefined

/** How many lines of a sheet name an entry. */
export const linesNamed = ({ rows }: Grid, fields: readonly Field[]): number =>
  rows.filter((row) => lineOf(row, fields)).length

/** Reads a sheet with a line for each entry. */
export function readForm(grid: Grid, fields: readonly Field[], styles: CellStyles): FoundSheet {
  const problems: Problem[] = []
  const values = grid.rows.flatMap((row): FoundValue[] => {
    const line = lineOf(row, fields)
    if (!line) return []
    const number = row[0]?.row ?? 1
    const place = grid.placeAt(number, line.answer)
    const cell = row.find((c) => c.column === line.answer)
    if (!cell) return [{ field: line.field, value: undefined, place }]
    const read = readValue(cell, line.field, grid.file, styles)
    problems.push(...lostZero(cell, line.field, grid.file))
    if (read.problem) problems.push(read.problem)
    return [{ field: line.field, value: read.value, place }]
  })
  return { ...nothingFound, values, problems }
}
