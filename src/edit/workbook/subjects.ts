import table from '../../../shared/workbook.json' with { type: 'json' }
import { factSpec } from '../../model/fact-spec.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { elementOf, schemaAt } from '../../validate/schema-advice/schema-keys.ts'
import { facility } from '../../validate/schemas/facility.ts'
import { type Field, fieldsBelow } from './fields.ts'

/** The words of the workbook itself. */
export const workbookWords = table.words

/** What stands on its first sheet. */
export const readMe: readonly string[] = table['read-me']

/** What every sheet has. */
type Head = { readonly id: string; readonly title: string; readonly about: string }

/** A sheet with a line for each entry of some groups. */
export type FormSubject = Head & {
  readonly is: 'form'
  readonly fields: readonly Field[]
  /** Keys of entries without which there is no manual. */
  readonly needed: readonly string[]
}

/** A sheet with a line for each of a list. */
export type ListSubject = Head & {
  readonly is: 'list'
  readonly at: readonly string[]
  readonly fields: readonly Field[]
  /** Keys by which one of the list is known again. */
  readonly knownBy: readonly string[]
}

/** A column of a table of readings. */
type TableColumn = {
  readonly head: string
  readonly how: string
  readonly suchAs: string
}

/** A sheet of readings, which lie in a table beside the facility file. */
export type TableSubject = Head & {
  readonly is: 'table'
  /** The entry that names the table, and of what it is where there may be several kinds. */
  readonly entry: 'surveys' | 'weather' | 'moisture' | 'daily-log'
  readonly of: string | undefined
  /** What its file is called where there is none yet. */
  readonly file: string
  readonly columns: readonly TableColumn[]
  /** Whether the entry says who took the readings. */
  readonly hasBy: boolean
}

export type Subject = FormSubject | ListSubject | TableSubject

type Row = (typeof table.sheets)[number]

const pathOf = (dotted: string): readonly string[] => dotted.split('.')

function subjectOf(row: Row, system: UnitSystem): Subject {
  const { id, title, about } = row
  if (row.entries)
    return {
      is: 'form',
      id,
      title,
      about,
      fields: row.entries.flatMap((entry) =>
        fieldsBelow(schemaAt(facility, pathOf(entry)), pathOf(entry), 0, system),
      ),
      needed: row.needed ?? [],
    }
  if (row.list !== undefined) {
    const at = pathOf(row.list)
    return {
      is: 'list',
      id,
      title,
      about,
      at,
      fields: fieldsBelow(elementOf(schemaAt(facility, at)), at, at.length, system),
      knownBy: row['known-by'] ?? [],
    }
  }
  const entry = row.table as TableSubject['entry']
  return {
    is: 'table',
    id,
    title,
    about,
    entry,
    of: row.of,
    file: row.file ?? '',
    columns: (row.columns ?? []).map((column) => ({
      head: column[system],
      how: column.fact === undefined ? (column.how ?? '') : (factSpec(column.fact)?.howTo ?? ''),
      suchAs: column['such-as'][system === 'us' ? 0 : 1] ?? '',
    })),
    hasBy: entry === 'surveys' || entry === 'moisture',
  }
}

const known = new Map<UnitSystem, readonly Subject[]>()

/** The sheets of the workbook, in their order. @param system Of examples and heads. */
export function subjects(system: UnitSystem): readonly Subject[] {
  const made = known.get(system) ?? table.sheets.map((row) => subjectOf(row as Row, system))
  known.set(system, made)
  return made
}
