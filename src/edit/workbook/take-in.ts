import type { Place, Problem } from '../../model/problem.ts'
import type { Path, SourceTree } from '../../read/read-yaml.ts'
import type { SourceFile } from '../../read/source-file.ts'
import { checkFacility } from '../../validate/check-facility.ts'
import type { Import } from '../../validate/imports/import.ts'
import { imports } from '../../validate/imports/imports.ts'
import { dataWith } from '../data-with.ts'
import { type Base, baseOf } from './base.ts'
import { valueAt } from './cell-text.ts'
import { completed } from './complete.ts'
import { type Found, rowOf } from './found.ts'
import { type Grid, openGrids, type TakenFile } from './grid.ts'
import { type Asked, merge } from './merge.ts'
import { mergeTables, type TableChange, type Tables } from './merge-tables.ts'
import { readSheets } from './read-sheets.ts'
import { placeKey, takenTree } from './taken-tree.ts'
import { forCells, unspliced } from './told-of-cells.ts'
import { inOrder, wholeText } from './whole-text.ts'

/** The facility as it is: its file, where there is one, and the tables beside it. */
export type Standing = {
  readonly tree: SourceTree | undefined
  readonly tables: Tables
  /** What the clock says, `YYYY-MM-DD`: the date of a manual whose file does not say another. */
  readonly today: string
}

/** How many lines of a sheet were read, and in how many something does not fit. */
export type Counted = { readonly name: string; readonly read: number; readonly not: number }

/** What a workbook or table says, and what taking it in would change. */
export type TakenIn = {
  readonly problems: readonly Problem[]
  readonly counted: readonly Counted[]
  readonly asked: readonly Asked[]
  readonly tables: readonly TableChange[]
  /** The facility file with what was read; undefined where nothing can be taken in. */
  readonly text: string | undefined
}

/** What was read, without the rows that something does not fit in. */
const without = (found: Found, bad: ReadonlySet<string>): Found => ({
  values: found.values.filter((one) => !bad.has(rowOf(one.place))),
  lists: found.lists.map((list) => ({
    ...list,
    rows: list.rows.map((row) => (bad.has(rowOf(row.place)) ? { ...row, faulty: true } : row)),
  })),
  tables: found.tables.filter((table) => !bad.has(rowOf(table.place))),
})

type Made = {
  readonly data: unknown
  readonly asked: readonly Asked[]
  readonly tables: readonly TableChange[]
  readonly problems: readonly Problem[]
}

/** Numbers of what is taken out of a list, by the path of the list. */
function takenOut(asked: readonly Asked[]): ReadonlyMap<string, readonly number[]> {
  const out = new Map<string, readonly number[]>()
  for (const { path, value } of asked) {
    const last = path.at(-1)
    if (value !== undefined || typeof last !== 'number') continue
    const list = placeKey(path.slice(0, -1))
    out.set(list, [...(out.get(list) ?? []), last])
  }
  return out
}

/** A path as it is when everything is taken out that goes. */
const moved = (path: Path, out: ReadonlyMap<string, readonly number[]>): Path =>
  path.map((step, i) =>
    typeof step === 'number'
      ? step - (out.get(placeKey(path.slice(0, i))) ?? []).filter((n) => n < step).length
      : step,
  )

/** Places of everything that is asked for, down to single values of a new line. */
function placesOf(found: Found, asked: readonly Asked[]): ReadonlyMap<string, Place> {
  const out = takenOut(asked)
  const places = new Map<string, Place>()
  const rows = found.lists.flatMap(({ subject, rows: all }) => all.map((row) => ({ subject, row })))
  for (const { path, value, place } of asked) {
    if (value === undefined) continue
    const at = moved(path, out)
    places.set(placeKey(at), place)
    const line = rows.find(({ row }) => row.place === place)
    for (const one of line?.row.values.values() ?? [])
      if (one.value !== undefined)
        places.set(placeKey([...at, ...one.field.path.slice(line?.subject.at.length)]), one.place)
  }
  return places
}

/** Places of empty cells, by what could stand in them. */
function emptyOf(found: Found, asked: readonly Asked[]): ReadonlyMap<string, Place> {
  const out = takenOut(asked)
  const lines = found.lists.flatMap(({ subject, rows }) =>
    asked.flatMap(({ path, place }) =>
      rows
        .filter((row) => row.place === place)
        .flatMap((row) => [...row.values.values()])
        .filter((one) => one.value === undefined)
        .map(
          (one) =>
            [
              placeKey([...moved(path, out), ...one.field.path.slice(subject.at.length)]),
              one.place,
            ] as const,
        ),
    ),
  )
  const values = found.values
    .filter((one) => one.value === undefined)
    .map((one) => [placeKey(one.field.path), one.place] as const)
  return new Map([...values, ...lines])
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

function checked(found: Found, made: Made, { standing, fileOf }: Work): readonly Problem[] {
  const tree = takenTree(made.data, {
    tree: standing.tree,
    places: placesOf(found, made.asked),
    empty: emptyOf(found, made.asked),
    fileOf,
  })
  const faults = [...checkFacility(tree).problems, ...readTables(made, standing)]
  return [...made.problems, ...faults].map(forCells)
}

/** Where a table has a fault, all of it is left out. */
const rowsWith = (
  problems: readonly Problem[],
  tables: readonly TableChange[],
): readonly string[] =>
  problems
    .filter((p) => p.severity === 'error')
    .flatMap(({ place }) => [
      rowOf(place),
      ...tables
        .filter(
          ({ found }) =>
            found.place.file === place.file && found.place.cell?.sheet === place.cell?.sheet,
        )
        .map(({ found }) => rowOf(found.place)),
    ])

/** Lines of what was read that hold something. */
const linesOf = (found: Found): ReadonlySet<string> =>
  new Set([
    ...found.values.filter((one) => one.value !== undefined).map((one) => rowOf(one.place)),
    ...found.lists.flatMap((list) => list.rows.map((row) => rowOf(row.place))),
    ...found.tables.flatMap(({ file, texts, place }) =>
      texts.slice(1).map((_, i) => `${file.path}#${place.cell?.sheet ?? ''}#table ${i}`),
    ),
  ])

const joined = (all: readonly Found[]): Found => ({
  values: all.flatMap((f) => [...f.values]),
  lists: all.flatMap((f) => [...f.lists]),
  tables: all.flatMap((f) => [...f.tables]),
})

function countedOf(
  grids: readonly { readonly grid: Grid; readonly found: Found }[],
  problems: readonly Problem[],
): readonly Counted[] {
  return grids.flatMap(({ grid, found }) => {
    const wrong = new Set(
      problems
        .filter(
          (p) =>
            p.severity === 'error' &&
            p.place.file === grid.file.path &&
            (p.place.cell?.sheet ?? grid.name).trim() === grid.name,
        )
        .map((p) => rowOf(p.place)),
    )
    const lines = linesOf(found)
    const sound =
      found.tables.length > 0
        ? lines.size - wrong.size
        : [...lines].filter((line) => !wrong.has(line)).length
    return lines.size + wrong.size === 0
      ? []
      : [{ name: grid.name, read: Math.max(0, sound), not: wrong.size }]
  })
}

/**
 * Reads a workbook or a table for a facility, and says what taking it in would change. What does not
 * fit is told with its sheet and cell and left out; the rest can be taken in. Nothing is written.
 */
export function takeIn(file: TakenFile, standing: Standing): TakenIn {
  const nothing = { counted: [], asked: [], tables: [], text: undefined }
  const { value: opened, problems: faults } = openGrids(file)
  if (!opened) return { ...nothing, problems: faults }
  // What a workbook was made of counts only where the facility is there still.
  const base = standing.tree && baseOf(opened.sheets)
  const units = unitsOf(opened.grids, standing)
  const sheets = readSheets(opened.grids, { units, base: baseOf(opened.sheets) })
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
  const bad = new Set(rowsWith(read, []))
  // All of it is looked at once, so that nothing is missed only because something else was left out.
  const first = madeOf(all, work)
  const told = checked(all, first, work).filter((p) => !bad.has(rowOf(p.place)))
  for (const row of rowsWith(told, first.tables)) bad.add(row)
  const problems = [...read, ...told]
  for (;;) {
    const found = without(all, bad)
    const made = madeOf(found, work)
    const left = checked(found, made, work).filter((p) => p.severity === 'error')
    const rows = rowsWith(left, made.tables).filter((row) => !bad.has(row))
    problems.push(...left.filter((p) => rows.includes(rowOf(p.place)) && isOfSheet(p, standing)))
    for (const row of rows) bad.add(row)
    if (left.length > 0 && rows.length > 0) continue
    const counted = countedOf(sheets, problems)
    if (left.length > 0)
      return { ...nothing, counted, problems: problems.length > 0 ? problems : left }
    const whole = wholeText(standing.tree?.file.text, made.asked, made.data)
    if (!whole.ok) return { ...nothing, counted, problems: [...problems, unspliced(whole.why)] }
    return { problems, counted, asked: made.asked, tables: made.tables, text: whole.text }
  }
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
      const value = row.find((cell) => cell.text === 'us' || cell.text === 'metric')
      if (isUnits && value) return value.text as 'us' | 'metric'
    }
  return undefined
}
