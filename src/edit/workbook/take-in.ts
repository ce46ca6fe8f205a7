import type { Place, Problem } from '../../model/problem.ts'
import type { SourceTree } from '../../read/read-yaml.ts'
import type { SourceFile } from '../../read/source-file.ts'
import { checkFacility } from '../../validate/check-facility.ts'
import { checkNotes } from '../../validate/facility/check-notes.ts'
import type { Import } from '../../validate/imports/import.ts'
import { imports } from '../../validate/imports/imports.ts'
import { dataWith } from '../data-with.ts'
import { type Base, baseOf } from './base.ts'
import { emptyOf, placesOf } from './cell-places.ts'
import { valueAt } from './cell-text.ts'
import { completed } from './complete.ts'
import { type Counted, countedOf } from './counted.ts'
import type { Field } from './fields.ts'
import { cellOf, type Found, type FoundRow, nothingFound, rowOf } from './found.ts'
import { type Grid, openGrids, type TakenFile } from './grid.ts'
import { type Asked, merge } from './merge.ts'
import { mergeTables, type TableChange, type Tables } from './merge-tables.ts'
import { readSheets } from './read-sheets.ts'
import { takenTree } from './taken-tree.ts'
import { forCells, unspliced } from './told-of-cells.ts'
import { inOrder, wholeText } from './whole-text.ts'

/** The facility as it is: its file, where there is one, and the tables beside it. */
export type Standing = {
  readonly tree: SourceTree | undefined
  readonly tables: Tables
  /** What the clock says, `YYYY-MM-DD`: the date of a manual whose file does not say another. */
  readonly today: string
  /** Titles of the procedures that there are, by id. */
  readonly procedures: ReadonlyMap<string, string>
  /** Figures and facts that a note may name. */
  readonly quantities: ReadonlySet<string>
}

/** What a workbook or table says, and what taking it in would change. */
export type TakenIn = {
  readonly problems: readonly Problem[]
  readonly counted: readonly Counted[]
  readonly asked: readonly Asked[]
  readonly tables: readonly TableChange[]
  /** What the sheets hold that fits. */
  readonly found: Found
  /** What the workbook was made of; undefined for one that was not made here. */
  readonly madeOf: Base | undefined
  /** Where nothing can be taken in: what there must be before there is a facility at all. */
  readonly needed: readonly Problem[]
  /** The facility file with what was read; undefined where nothing can be taken in. */
  readonly text: string | undefined
}

/** A line without the cells in which something does not fit. */
const sound = (row: FoundRow, bad: ReadonlySet<string>): FoundRow =>
  bad.has(rowOf(row.place))
    ? { ...row, faulty: true }
    : { ...row, values: new Map([...row.values].filter(([, one]) => !bad.has(cellOf(one.place)))) }

/** What was read, without what does not fit: entries, cells of a line, or the line where all of it falls with it. */
const without = (found: Found, bad: ReadonlySet<string>): Found => ({
  values: found.values.filter((one) => !bad.has(rowOf(one.place))),
  lists: found.lists.map((list) => ({ ...list, rows: list.rows.map((row) => sound(row, bad)) })),
  tables: found.tables.filter((table) => !bad.has(rowOf(table.place))),
})

type Made = {
  readonly data: unknown
  readonly asked: readonly Asked[]
  readonly tables: readonly TableChange[]
  readonly problems: readonly Problem[]
}

function readTables(made: Made, { today }: Standing): readonly Problem[] {
  const place = valueAt(made.data, ['place'])
  const number = (key: string): number | undefined => {
    const value = valueAt(place, [key])
    return typeof value === 'number' ? value : undefined
  }
  const units = valueAt(made.data, ['units'])
  const asOf = valueAt(made.data, ['as-of'])
  const date = typeof asOf === 'string' ? asOf : today
  return made.tables.flatMap(({ found, file }) => {
    const kind = imports[found.subject.entry] as unknown as Import<
      { readonly file: string },
      unknown
    >
    const entry = { file, of: found.subject.of, by: found.by ?? '' }
    return kind.read(found.file, entry, {
      at: found.place,
      date,
      units: units === 'us' || units === 'metric' ? units : undefined,
      latitude: number('latitude'),
      longitude: number('longitude'),
    }).problems
  })
}

type Work = {
  readonly standing: Standing
  readonly base: Base | undefined
  readonly fileOf: (place: Place) => SourceFile
}

function madeOf(found: Found, { standing, base, fileOf }: Work): Made {
  const before = standing.tree?.data
  const merged = merge(found, before, base, fileOf)
  const tables = mergeTables(found, before, base, standing.tables)
  const asked = [...merged.asked, ...tables.asked]
  let data: unknown = before ?? {}
  for (const { path, value } of inOrder(asked)) data = dataWith(data, path, value)?.data ?? data
  return { data, asked, tables: tables.tables, problems: [...merged.problems, ...tables.problems] }
}

const cellKey = ({ cell }: Place): string => `${cell?.sheet}!${cell?.name}`

/** The entries of cells. */
function fieldsByCell({ values, lists }: Found): ReadonlyMap<string, Field> {
  const cells = [
    ...values,
    ...lists.flatMap(({ rows }) => rows.flatMap((row) => [...row.values.values()])),
  ]
  return new Map(cells.map(({ field, place }) => [cellKey(place), field]))
}

/** What notes may name. */
const targetsOf = ({ procedures, quantities }: Standing) => ({ quantities, procedures })

function checked(found: Found, made: Made, { standing, fileOf }: Work): readonly Problem[] {
  const tree = takenTree(made.data, {
    tree: standing.tree,
    places: placesOf(found, made.asked),
    empty: emptyOf(found, made.asked),
    fileOf,
  })
  const { value: facility, problems } = checkFacility(tree)
  const notes = facility ? checkNotes(facility, targetsOf(standing)) : []
  const fields = fieldsByCell(found)
  return [...made.problems, ...problems, ...notes, ...readTables(made, standing)].map((problem) =>
    forCells(problem, fields.get(cellKey(problem.place))),
  )
}

/** Cells of lists that can be left out while the rest of their line is taken in. */
const spareCells = ({ lists }: Found): ReadonlySet<string> =>
  new Set(
    lists.flatMap(({ subject, rows }) =>
      rows.flatMap((row) =>
        [...row.values]
          .filter(([key]) => !subject.knownBy.includes(key))
          .map(([, { place }]) => cellOf(place)),
      ),
    ),
  )

/** What falls with a problem: its cell, else its row. Where a table has a fault, all of it is left out. */
const fallenWith = (
  problems: readonly Problem[],
  tables: readonly TableChange[],
  { spare, bad }: { readonly spare: ReadonlySet<string>; readonly bad: ReadonlySet<string> },
): readonly string[] =>
  problems
    .filter((p) => p.severity === 'error')
    .flatMap(({ place }) => {
      const cell = cellOf(place)
      return [
        // What is still missed without its cell takes the whole line along.
        spare.has(cell) && !bad.has(cell) ? cell : rowOf(place),
        ...tables
          .filter(
            ({ found }) =>
              found.place.file === place.file && found.place.cell?.sheet === place.cell?.sheet,
          )
          .map(({ found }) => rowOf(found.place)),
      ]
    })

const joined = (all: readonly Found[]): Found => ({
  values: all.flatMap((f) => [...f.values]),
  lists: all.flatMap((f) => [...f.lists]),
  tables: all.flatMap((f) => [...f.tables]),
})

/**
 * Reads a workbook or a table for a facility, and says what taking it in would change. What does not
 * fit is told with its sheet and cell and left out; the rest can be taken in. Nothing is written.
 */
export function takeIn(file: TakenFile, standing: Standing): TakenIn {
  const nothing = {
    counted: [],
    asked: [],
    tables: [],
    found: nothingFound,
    madeOf: undefined,
    needed: [],
    text: undefined,
  }
  const { value: opened, problems: faults } = openGrids(file)
  if (!opened) return { ...nothing, problems: faults }
  // What a workbook was made of counts only where the facility is there still.
  const ownBase = baseOf(opened.sheets)
  const base = standing.tree && ownBase
  const units = unitsOf(opened.grids, standing)
  const currency = valueAt(standing.tree?.data, ['currency'])
  const sheets = readSheets(opened.grids, {
    units,
    currency: typeof currency === 'string' ? currency : undefined,
    base: ownBase,
    procedures: standing.procedures,
  })
  const fileOf = (place: Place): SourceFile =>
    opened.grids.find(
      (g) =>
        g.file.path === place.file &&
        (place.cell === undefined || g.file.sheet?.name === place.cell.sheet),
    )?.file ??
    standing.tree?.file ?? { path: place.file, text: '' }
  const work = { standing, base, fileOf }
  const all = completed(joined(sheets.map((s) => s.found)), standing.tree?.data)
  const read = [...faults, ...sheets.flatMap((s) => s.found.problems)]
  const spare = spareCells(all)
  const bad = new Set<string>(fallenWith(read, [], { spare, bad: new Set() }))
  const isNews = ({ place }: Problem): boolean => !bad.has(rowOf(place)) && !bad.has(cellOf(place))
  // All of it is looked at once, so that nothing is missed only because something else was left out.
  const first = madeOf(all, work)
  const faulty = checked(all, first, work).filter(isNews)
  for (const one of fallenWith(faulty, first.tables, { spare, bad: new Set() })) bad.add(one)
  const problems = [...read, ...faulty]
  for (;;) {
    const found = without(all, bad)
    const made = madeOf(found, work)
    const left = checked(found, made, work).filter((p) => p.severity === 'error')
    const fallen = fallenWith(left, made.tables, { spare, bad }).filter((one) => !bad.has(one))
    // That a line lacks what was left out of it has been told.
    const isTold = ({ place }: Problem): boolean =>
      [...bad].some((one) => one.startsWith(`${rowOf(place)}#`))
    problems.push(...left.filter((p) => isNews(p) && !isTold(p) && isOfSheet(p, standing)))
    for (const one of fallen) bad.add(one)
    if (left.length > 0 && fallen.length > 0) continue
    const counted = countedOf(sheets, problems)
    const told = bySheet(problems.length > 0 ? problems : left, opened.grids)
    if (left.length > 0) return { ...nothing, counted, problems: told, needed: neededOf(left, all) }
    const whole = wholeText(standing.tree?.file.text, made.asked, made.data)
    if (!whole.ok) return { ...nothing, counted, problems: [...told, unspliced(whole.why)] }
    return {
      problems: told,
      counted,
      asked: made.asked,
      tables: made.tables,
      found,
      madeOf: ownBase,
      needed: [],
      text: whole.text,
    }
  }
}

/** Problems in the order of the sheets of a workbook. */
function bySheet(problems: readonly Problem[], grids: readonly Grid[]): readonly Problem[] {
  const rank = ({ place }: Problem): number =>
    grids.findIndex(
      ({ file }) => file.path === place.file && file.sheet?.name === place.cell?.sheet,
    )
  return problems.toSorted((a, b) => rank(a) - rank(b))
}

/** What is missing, each with the cell in which it could stand; nothing where something else is wrong. */
function neededOf(left: readonly Problem[], { values }: Found): readonly Problem[] {
  if (left.some(({ code }) => code !== 'schema/missing' && code !== 'oval/too-little')) return []
  return left.map((problem) => {
    const path = problem.path?.join('.')
    const cell = values.find(({ field }) => field.path.join('.') === path)
    return cell ? { ...problem, place: cell.place } : problem
  })
}

/** Whether a problem is about a sheet or table that is taken in. */
const isOfSheet = ({ place }: Problem, { tree }: Standing): boolean =>
  place.file !== (tree?.file.path ?? 'facility.yaml')

/** The units of a facility, or those that a workbook says of one that is to be. */
function unitsOf(grids: readonly Grid[], { tree }: Standing): 'us' | 'metric' | undefined {
  const said = valueAt(tree?.data, ['units'])
  if (said === 'us' || said === 'metric') return said
  for (const { rows } of grids)
    for (const row of rows) {
      const isUnits = row.some((cell) => cell.text === 'units')
      const value = row.find(({ text }) => /^(?:us|metric)$/i.test(text))
      if (isUnits && value) return value.text.toLowerCase() as 'us' | 'metric'
    }
  return undefined
}
