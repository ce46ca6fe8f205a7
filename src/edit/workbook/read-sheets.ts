import type { Problem } from '../../model/problem.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { problemAt } from '../../read/source-file.ts'
import { fairYear, yearOf } from '../../validate/fair-year.ts'
import { dayStyle } from '../../validate/imports/day-style.ts'
import { numberStyle } from '../../validate/imports/number-style.ts'
import { asKey, entryCalled } from '../../validate/schema-advice/near-name.ts'
import { type Base, baseSheet } from './base.ts'
import type { CellStyles } from './cell-values.ts'
import type { Field } from './fields.ts'
import { type FoundSheet, nothingFound } from './found.ts'
import type { Grid, GridCell } from './grid.ts'
import { fieldNamed, linesNamed, readForm } from './read-form.ts'
import { headRow, isHelp, readList } from './read-list.ts'
import { headsNamed, readTableSheet } from './read-table.ts'
import { type Subject, subjects, workbookWords as words } from './subjects.ts'
import { unreadCells } from './unread-cells.ts'

const isNamed = (grid: Grid, { id, title, ...subject }: Subject): boolean => {
  const key = asKey(grid.name.replace(/ \d+$/, ''))
  const path = subject.is === 'list' ? subject.at.join('.') : ''
  return [id, asKey(title), path].includes(key) || (path !== '' && entryCalled(key) === path)
}

/** How well the heads or lines of a sheet fit a subject; those that must be there count double. */
function fitOf(grid: Grid, subject: Subject): number {
  if (subject.is === 'form') return linesNamed(grid, subject.fields)
  if (subject.is === 'table')
    return Math.max(0, ...grid.rows.slice(0, 6).map((row) => headsNamed(row, subject)))
  const keys = headRow(grid, subject).columns.map((c) => c.field.key)
  return subject.knownBy.every((key) => keys.includes(key) || key === 'id') ? keys.length : 0
}

/**
 * What a sheet is about: what its title or the name of its file says, else what its heads fit best,
 * where two of them or more do.
 */
function subjectOf(grid: Grid, all: readonly Subject[]): Subject | undefined {
  const named = all.find((subject) => isNamed(grid, subject))
  if (named && fitOf(grid, named) > 0) return named
  const scored = all.map((subject) => ({ subject, fits: fitOf(grid, subject) }))
  const best = scored.reduce((a, b) => (b.fits > a.fits ? b : a))
  return best.fits >= 2 ? best.subject : named
}

/** Cells that hold a value of an entry of some kind, as far as their columns tell. */
function cellsOf(grid: Grid, subject: Subject, wanted: (field: Field) => boolean): GridCell[] {
  if (subject.is === 'table') return []
  if (subject.is === 'list') {
    const { index, columns } = headRow(grid, subject)
    const taken = columns.filter((c) => wanted(c.field)).map((c) => c.column)
    return grid.rows
      .slice(index + 1)
      .filter((row) => !isHelp(row))
      .flatMap((row) => row.filter((c) => taken.includes(c.column)))
  }
  return grid.rows.flatMap((row) => {
    const field = row.map((cell) => fieldNamed(cell.text, subject.fields)).find((f) => f)
    return field && wanted(field) ? row.filter((cell) => cell.column === 2) : []
  })
}

/** What the sheets of a file hold, one by one, and how it is written. */
type Known = {
  /** Of the facility, where they are known. */
  readonly units: UnitSystem | undefined
  /** Its money, where somebody has said. */
  readonly currency: string | undefined
  /** What the workbook was made of, where it was made here: what it says still is known to be right. */
  readonly base: Base | undefined
  /** Titles of the procedures that there are, by id. */
  readonly procedures: ReadonlyMap<string, string>
}

/** All texts of some data. */
function textsIn(data: unknown): readonly string[] {
  if (typeof data === 'object' && data !== null) return Object.values(data).flatMap(textsIn)
  return [String(data)]
}

function stylesOf(
  sheets: readonly (readonly [Grid, Subject])[],
  { units, currency, base, procedures }: Known,
): (grid: Grid) => CellStyles {
  const isNumber = (field: Field): boolean => field.kind === 'quantity' || field.kind === 'number'
  const isDay = (field: Field): boolean => field.kind === 'day' || field.kind === 'several-days'
  const cells = (wanted: (field: Field) => boolean, of = sheets): GridCell[] =>
    of.flatMap(([grid, subject]) => cellsOf(grid, subject, wanted))
  const before = new Set(textsIn(base?.data))
  const typed = cells(isNumber).filter((cell) => !before.has(cell.text))
  const style = numberStyle(typed, base || units === 'us' ? '.' : undefined)
  const numbers = { ...style, apart: true, known: before }
  const raceDays = cells((field) => field.path.join('.') === 'race-days.date').map(
    (cell) => cell.text,
  )
  return (grid) => ({
    numbers,
    procedures,
    locale: units && {
      system: units,
      currency: currency ?? (units === 'us' ? 'USD' : 'EUR'),
    },
    fairYear: yearOf(raceDays) ?? fairYear(base?.data),
    days: dayStyle(
      cells(
        isDay,
        sheets.filter(([g]) => g === grid),
      ).map((cell) => cell.text),
      '',
      units,
    ),
  })
}

/** A sheet that somebody has added to the workbook for themselves. */
const ownSheet = (grid: Grid): Problem =>
  problemAt(
    grid.file,
    grid.placeAt(grid.rows[0]?.[0]?.row ?? 1, 1),
    'schema/unknown-key',
    `the sheet "${grid.name}" is none of this workbook's: it was not read, and stays as it is`,
    { severity: 'warning' },
  )

const unknownSheet = (grid: Grid, all: readonly Subject[]): Problem =>
  problemAt(
    grid.file,
    grid.placeAt(grid.rows[0]?.[0]?.row ?? 1, 1),
    'schema/unknown-key',
    `nobody can tell what "${grid.name}" is about`,
    {
      hint: `call the sheet or file by its subject: ${all.map((s) => s.title.toLowerCase()).join(', ')}`,
    },
  )

/** Sheets that say nothing of a facility. */
const isAside = (grid: Grid): boolean =>
  grid.rows.length === 0 || [baseSheet, words['read-me'], words.choices].includes(grid.name)

function readSheet(grid: Grid, subject: Subject, styles: CellStyles): FoundSheet {
  if (subject.is === 'form') return readForm(grid, subject.fields, styles)
  if (subject.is === 'list') return readList(grid, subject, styles)
  const number = Number(/ (\d+)$/.exec(grid.name)?.[1] ?? 1)
  return readTableSheet(grid, subject, number - 1)
}

/** Reads every sheet by its subject. */
export function readSheets(
  grids: readonly Grid[],
  known: Known,
): readonly {
  readonly grid: Grid
  readonly subject: Subject | undefined
  readonly found: FoundSheet
}[] {
  const all = subjects(known.units ?? 'us')
  const told = grids
    .filter((grid) => !isAside(grid))
    .map((grid) => ({ grid, subject: subjectOf(grid, all) }))
  const styles = stylesOf(
    told.flatMap(({ grid, subject }) => (subject ? [[grid, subject] as const] : [])),
    known,
  )
  return told.map(({ grid, subject }) => {
    if (!subject) {
      const problem = known.base ? ownSheet(grid) : unknownSheet(grid, all)
      return { grid, subject, found: { ...nothingFound, problems: [problem] } }
    }
    const found = readSheet(grid, subject, styles(grid))
    const problems = [...found.problems, ...(known.base ? unreadCells(grid, subject) : [])]
    return { grid, subject, found: { ...found, problems } }
  })
}
