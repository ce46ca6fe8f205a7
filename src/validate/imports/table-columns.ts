import { didYouMean } from '../../model/closest.ts'
import { type FactPath, factSpec } from '../../model/fact-spec.ts'
import type { Problem, Result } from '../../model/problem.ts'
import { kindOf, type UnitSystem } from '../../model/quantity/kinds.ts'
import type { CsvCell, CsvTable } from '../../read/read-csv.ts'
import { problemAt } from '../../read/source-file.ts'
import { dayFault } from '../day-fault.ts'
import { readMeasured } from '../read-measured.ts'
import { type DayStyle, dayStyle, readDay } from './day-style.ts'
import { type NumberStyle, numberStyle, withPoint } from './number-style.ts'

/**
 * A column of a table: a day, words that somebody wrote, or a quantity whose kind and range are
 * those of a fact. Cells of an optional column and of words may be empty, and the column may be
 * missing.
 */
type ColumnSpec = 'day' | 'words' | { readonly fact: FactPath; readonly optional?: true }

export type ColumnSpecs = Readonly<Record<string, ColumnSpec>>

type CellValue<Spec extends ColumnSpec> = Spec extends 'day'
  ? string
  : Spec extends 'words'
    ? string | undefined
    : Spec extends { readonly optional: true }
      ? number | undefined
      : number

/** A row that was read without a fault: SI numbers and days, each with its cell. */
export type TableRow<Specs extends ColumnSpecs> = {
  readonly values: { readonly [Name in keyof Specs]: CellValue<Specs[Name]> }
  readonly cells: { readonly [Name in keyof Specs]: CsvCell }
}

/** Where a column stands; `unit` stands in the head for all its cells. */
type Found = { readonly index: number; readonly unit: string }

/**
 * The name of a column and, where the head gives one, the unit of all its cells: `station (ft)`.
 */
const columnHead = /^(.+?)(?:\s*[([]\s*(.+?)\s*[)\]])?$/

/** The name of a column in small letters, and the unit in its head; an empty one where none is. */
export function partHead(head: string): { readonly name: string; readonly unit: string } {
  // A head that is longer names no column here, and the pattern would take long over it.
  const [, written = head, unit = ''] = columnHead.exec(head.slice(0, 200)) ?? []
  return { name: written.toLowerCase(), unit }
}

/** Whether a cell is a number without a unit, which then is that of its column. */
export const isBare = (text: string): boolean => /^[-+.\d][\d.,/ -]*$/.test(text)

const isOptional = (spec: ColumnSpec | undefined): boolean =>
  spec === 'words' || (typeof spec === 'object' && spec.optional === true)

function unknownColumn(
  table: CsvTable,
  cell: CsvCell,
  name: string,
  names: readonly string[],
  found: ReadonlyMap<string, Found>,
): Problem {
  return problemAt(
    table.file,
    cell.place,
    'schema/unknown-key',
    found.has(name) ? `the column "${name}" stands here twice` : `unknown column "${cell.text}"`,
    {
      hint:
        didYouMean(
          name,
          names.filter((known) => !found.has(known)),
        ) ?? `the columns are ${names.join(', ')}`,
    },
  )
}

/** Finds the columns of a table by their heads. */
function findColumns(
  table: CsvTable,
  specs: ColumnSpecs,
  example: string,
): Result<ReadonlyMap<string, Found>> {
  const names = Object.keys(specs)
  const found = new Map<string, Found>()
  const problems: Problem[] = []
  for (const [index, cell] of table.head.entries()) {
    const { name, unit } = partHead(cell.text)
    if (names.includes(name) && !found.has(name)) found.set(name, { index, unit })
    else problems.push(unknownColumn(table, cell, name, names, found))
  }
  const missing = names.filter((name) => !found.has(name) && !isOptional(specs[name]))
  const head = table.head[0]
  if (missing.length > 0 && head)
    problems.push(
      problemAt(
        table.file,
        head.place,
        'schema/missing',
        `the head lacks ${missing.map((m) => `"${m}"`).join(', ')}`,
        { hint: `write it as, for example: ${example}` },
      ),
    )
  return problems.length > 0 ? { value: undefined, problems } : { value: found, problems }
}

/** A fault in a cell. */
export const cellProblem = (
  table: CsvTable,
  cell: CsvCell,
  code: Problem['code'],
  message: string,
  hint?: string,
): Problem => problemAt(table.file, cell.place, code, message, { hint })

/** How the numbers and days of a table are written. */
type Styles = { readonly numbers: NumberStyle; readonly days: DayStyle }

/**
 * Numbers by those of the whole table, days by those of their column. In a text parted by commas, and
 * in any table of a place with the units of the United States that has no semicolons, a point stands
 * before decimals unless they say otherwise.
 */
function stylesOf(
  table: CsvTable,
  specs: ColumnSpecs,
  columns: ReadonlyMap<string, Found>,
  units: UnitSystem | undefined,
): Styles {
  const cells = (wanted: (spec: ColumnSpec | undefined) => boolean): CsvCell[] =>
    [...columns].flatMap(([name, { index }]) =>
      wanted(specs[name]) ? table.rows.flatMap((row) => row[index] ?? []) : [],
    )
  const hasPoints = table.delimiter === ',' || (units === 'us' && table.delimiter !== ';')
  const head = [...columns].find(([name]) => specs[name] === 'day')?.[1].unit ?? ''
  return {
    numbers: numberStyle(
      cells((spec) => typeof spec === 'object'),
      hasPoints ? '.' : undefined,
    ),
    days: dayStyle(
      cells((spec) => spec === 'day').map((cell) => cell.text),
      head,
      units,
    ),
  }
}

/** Advice for a file that has remarks; a table has none. */
const onlyInYaml = /; [^;]* can stand behind #$/

/** A cell as a quantity, with the unit of its column where the cell has none of its own. */
function readQuantity(
  table: CsvTable,
  cell: CsvCell,
  { unit, path, numbers }: { unit: string; path: FactPath; numbers: NumberStyle },
): number | Problem {
  if (!factSpec(path)) throw new RangeError(`no fact ${path}`)
  const text = withPoint(cell, numbers)
  if (typeof text !== 'string') return cellProblem(table, cell, text.code, text.message, text.hint)
  const read = readMeasured(path, isBare(text) && unit !== '' ? `${text} ${unit}` : text)
  return 'si' in read
    ? read.si
    : cellProblem(
        table,
        cell,
        read.params.code,
        read.message,
        read.params.hint?.replace(onlyInYaml, ''),
      )
}

function readCell(
  table: CsvTable,
  cell: CsvCell,
  unit: string,
  spec: ColumnSpec,
  { numbers, days }: Styles,
): number | string | undefined | Problem {
  if (spec === 'day') {
    const day = readDay(cell.text, days)
    return typeof day === 'string'
      ? day
      : cellProblem(table, cell, 'schema/format', day.message, day.hint)
  }
  if (isOptional(spec) && cell.text === '') return undefined
  return spec === 'words'
    ? cell.text
    : readQuantity(table, cell, { unit, path: spec.fact, numbers })
}

/**
 * Reads a table by the specifications of its columns. Every fault of every cell is reported; rows
 * without one are given all the same, so that what is asked of whole rows can be reported too.
 * @param example A head as it could be written.
 * @param units Of the place, where they are known: they tell how its people write dates.
 */
export function readRows<const Specs extends ColumnSpecs>(
  table: CsvTable,
  specs: Specs,
  example: string,
  units: UnitSystem | undefined,
): { readonly rows: readonly TableRow<Specs>[]; readonly problems: readonly Problem[] } {
  const { value: columns, problems: headProblems } = findColumns(table, specs, example)
  if (!columns) return { rows: [], problems: headProblems }
  const problems: Problem[] = []
  const styles = stylesOf(table, specs, columns, units)
  const rows = table.rows.flatMap((row) => {
    const values: Record<string, number | string | undefined> = {}
    const cells: Record<string, CsvCell> = {}
    let sound = true
    for (const [name, { index, unit }] of columns) {
      const [cell, spec] = [row[index], specs[name]]
      if (cell === undefined || spec === undefined) continue
      const read = readCell(table, cell, unit, spec, styles)
      if (typeof read === 'object') {
        problems.push(read)
        sound = false
      } else values[name] = read
      cells[name] = cell
    }
    return sound ? [{ values, cells } as unknown as TableRow<Specs>] : []
  })
  return { rows, problems: unitsOnce(table, problems, { columns, specs, units }) }
}

type Columns = {
  readonly columns: ReadonlyMap<string, Found>
  readonly specs: ColumnSpecs
  readonly units: UnitSystem | undefined
}

/** Numbers of one column that have no unit are told once: it is written in the head. */
function unitsOnce(
  table: CsvTable,
  problems: readonly Problem[],
  { columns, specs, units = 'us' }: Columns,
): readonly Problem[] {
  const lacking = problems.filter((p) => p.code === 'quantity/no-unit')
  const isIn = (problem: Problem, index: number): boolean =>
    table.rows.some((row) => {
      const { line, column } = row[index]?.place ?? {}
      return line === problem.place.line && column === problem.place.column
    })
  const once = [...columns].flatMap(([name, { index }]) => {
    const [first, ...more] = lacking.filter((p) => isIn(p, index))
    const spec = specs[name]
    const kind = typeof spec === 'object' ? factSpec(spec.fact)?.kind : undefined
    if (first === undefined || kind === undefined) return []
    const others =
      more.length === 0
        ? ''
        : `, nor ${more.length === 1 ? 'has one' : `have ${more.length}`} more below it`
    const hint = `write the unit of the whole column in its head: ${name} (${kindOf(kind)[units].unit})`
    return [{ ...first, message: `${first.message}${others}`, hint }]
  })
  return [...problems.filter((p) => p.code !== 'quantity/no-unit'), ...once]
}

/** The first day on which nothing can have been seen, or long ago, and how many more there are. */
export function dayProblems(
  table: CsvTable,
  rows: readonly { readonly values: { date: string }; readonly cells: { date: CsvCell } }[],
  date: string,
): Problem[] {
  const odd = rows.flatMap(({ values, cells }) => {
    const fault = dayFault(values.date, date)
    return fault ? [{ ...fault, cell: cells.date, day: values.date }] : []
  })
  const first = odd.find((o) => o.severity === 'error') ?? odd[0]
  if (!first) return []
  const more = new Set(odd.map((o) => o.day)).size - 1
  const { cell, message, hint, severity } = first
  const others = more > 0 ? `; so ${more === 1 ? 'is one more day' : `are ${more} more days`}` : ''
  return [
    problemAt(table.file, cell.place, 'facility/odd', `${message}${others}`, { hint, severity }),
  ]
}
