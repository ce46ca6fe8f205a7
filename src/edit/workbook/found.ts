import type { Place, Problem } from '../../model/problem.ts'
import type { SourceFile } from '../../read/source-file.ts'
import type { Value } from '../written.ts'
import type { TableTexts } from './base.ts'
import type { Field } from './fields.ts'
import type { ListSubject, TableSubject } from './subjects.ts'

/** What a cell says of an entry; nothing where it is empty. */
export type FoundValue = {
  readonly field: Field
  readonly value: Value | undefined
  readonly place: Place
}

/** A line of a list, with the cells in which something could stand, by the keys of its fields. */
export type FoundRow = {
  readonly values: ReadonlyMap<string, FoundValue>
  readonly place: Place
  /** Something in it does not fit: nothing of it is taken in. */
  readonly faulty: boolean
}

/** The lines of a list that stand on one sheet. */
export type FoundList = {
  readonly subject: ListSubject
  readonly rows: readonly FoundRow[]
  /** Where the sheet begins. */
  readonly place: Place
}

/** A sheet of readings. */
export type FoundTable = {
  readonly subject: TableSubject
  /** Counted from 0 among the tables of its kind. */
  readonly index: number
  readonly texts: TableTexts
  /** Who took the readings, where the sheet says so. */
  readonly by: string | undefined
  /** The sheet with nothing but head and readings. */
  readonly file: SourceFile
  readonly place: Place
}

/** What sheets hold for a facility. */
export type Found = {
  readonly values: readonly FoundValue[]
  readonly lists: readonly FoundList[]
  readonly tables: readonly FoundTable[]
}

/** What was read of one sheet, with its faults. */
export type FoundSheet = Found & { readonly problems: readonly Problem[] }

export const nothingFound: Found = { values: [], lists: [], tables: [] }

/** The row of a file or sheet in which something stands: `Contacts#7`. */
export const rowOf = ({ file, cell, line }: Place): string => `${file}#${cell?.sheet ?? ''}#${line}`

/** The cell in which something stands: `Contacts#7#D7`. */
export const cellOf = (place: Place): string => `${rowOf(place)}#${place.cell?.name ?? ''}`
