import { isDay } from '../../model/day.ts'
import { hasErrors, type Problem } from '../../model/problem.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { depthName, isKeptNumber } from '../../model/records.ts'
import { readRecords } from '../../read/csv-fields.ts'
import { asWritten } from '../../read/harmless-cell.ts'
import { type CsvTable, readCsv } from '../../read/read-csv.ts'
import { readSurvey } from '../../validate/imports/survey-table.ts'
import { isBare, partHead } from '../../validate/imports/table-columns.ts'
import { type Kept, rowName, written } from './kept.ts'
import { withUnit } from './numbers.ts'
import { allHead, sampleForm, type TableName, tables } from './tables.ts'

/** What was read of a file: records, or what is wrong with it; `unknown` is none of the tables. */
export type ReadBack =
  | { readonly kept: Kept }
  | { readonly problems: readonly Problem[] }
  | { readonly unknown: true }

/** A file of everything; nothing of it is a facility's table. */
function readAll(text: string): Kept {
  const [, ...records] = readRecords(text.replace(/^\uFEFF/, '')).records
  return records.reduce<Kept>((kept, [date, name, said]) => {
    const day = date?.text.trim() ?? ''
    return isDay(day) && name !== undefined && said !== undefined
      ? written(kept, day, name.text.trim(), asWritten(said.text))
      : kept
  }, {})
}

/** A column that only this table has tells which one it is. */
const telling: Readonly<Record<TableName, readonly string[]>> = {
  depths: ['depth'],
  weather: ['high'],
  moisture: ['moisture'],
  log: ['use', 'loads', 'stored', 'work', 'seen', 'tomorrow'],
}

function tableNamed(heads: readonly string[]): TableName | undefined {
  const names = Object.keys(telling) as TableName[]
  return names.find((name) => telling[name].some((column) => heads.includes(column)))
}

/** Readings of the depth, each under its place. */
function depthsOf(text: string, unit: string, system: UnitSystem, today: string): Kept {
  const at = { file: '', line: 1, column: 1, length: 1 }
  const read = readSurvey({ path: '', text }, { of: 'cushion-depth', by: '' }, { at, date: today })
  return (read.value?.rows ?? []).reduce<Kept>((kept, { date, station, offset, cells }) => {
    const said = isBare(cells.value.text) ? `${cells.value.text} ${unit}` : cells.value.text
    return written(kept, date, depthName(station, offset), withUnit('depth', said, system))
  }, {})
}

/** Cells of all other tables, under the names of their columns. */
function cellsOf(table: CsvTable, name: TableName, system: UnitSystem): Kept {
  const heads = table.head.map(({ text }) => partHead(text))
  const dated = heads.findIndex((h) => h.name === 'date')
  const count = new Map<string, number>()
  return table.rows.reduce<Kept>((before, cells) => {
    const date = cells[dated]?.text ?? ''
    const row = (count.get(date) ?? 0) + 1
    count.set(date, row)
    return heads.reduce<Kept>((kept, { name: column, unit }, i) => {
      const said = cells[i]?.text ?? ''
      if (i === dated || said === '') return kept
      const whole = isBare(said) && unit !== '' ? `${said} ${unit}` : said
      const text = isKeptNumber(column) ? withUnit(column, whole, system) : asWritten(said)
      const under = name === 'moisture' ? rowName(sampleForm, row, column) : column
      return written(kept, date, under, text)
    }, before)
  }, {})
}

/**
 * Reads a file back: one of everything, or a table of the facility folder, which the folder's own
 * reader checks first.
 * @param today Of the phone.
 */
export function readBack(text: string, system: UnitSystem, today: string): ReadBack {
  const { value: table, problems } = readCsv({ path: '', text })
  const heads = table?.head.map((cell) => partHead(cell.text)) ?? []
  const names = heads.map(({ name }) => name)
  if (names.join() === allHead.join()) return { kept: readAll(text) }
  const name = tableNamed(names)
  if (!table) return problems.length > 0 ? { problems } : { unknown: true }
  if (name === undefined) return { unknown: true }
  const checked = tables[name].read(text, today)
  if (hasErrors(checked.problems)) return { problems: checked.problems }
  return {
    kept:
      name === 'depths'
        ? depthsOf(text, heads.find((h) => h.name === 'depth')?.unit ?? '', system, today)
        : cellsOf(table, name, system),
  }
}
