import type { Problem } from '../../model/problem.ts'
import { problemAt, type SourceFile } from '../../read/source-file.ts'
import { type DayStyle, readDay } from '../../validate/imports/day-style.ts'
import { type NumberStyle, withPoint } from '../../validate/imports/number-style.ts'
import { choiceCalled } from '../../validate/schema-advice/near-name.ts'
import type { Value } from '../written.ts'
import { severalOf } from './cell-text.ts'
import type { Field } from './fields.ts'
import type { GridCell } from './grid.ts'

/** How the cells of a file are written. */
export type CellStyles = {
  /** Of numbers that somebody typed; those that stood there before are read as the file has them. */
  readonly numbers: NumberStyle & { readonly known: ReadonlySet<string> }
  readonly days: DayStyle
}

const bare = /^-?\d+(?:\.\d+)?$/
const yes = /^(?:yes|y|true|x|✓)$/i
const no = /^(?:no|n|false|-)$/i

/** What a cell says; where it cannot be read, its text all the same, with the problem. */
type Read = { readonly value: Value | undefined; readonly problem?: Problem }

function numberOf(text: string, field: Field, unit: string): Value {
  if (field.kind === 'number') return bare.test(text) ? Number(text) : text
  // What has a unit in its head is that many of them.
  if (unit !== '' && /^[-+.\d][\d.,/ -]*$/.test(text)) return `${text} ${unit}`
  return bare.test(text) ? Number(text) : text
}

const chosen = (text: string, { choices }: Field): string =>
  choices.length === 0 ? text : (choiceCalled(text, choices) ?? text)

/**
 * What a cell says of an entry, as it stands in the facility file; nothing for an empty cell. Whether
 * it can be so is asked later, of all entries together.
 * @param unit Of the column, where its head gives one.
 */
export function readValue(
  cell: GridCell,
  field: Field,
  file: SourceFile,
  { numbers, days }: CellStyles,
  unit = '',
): Read {
  const { text } = cell
  const fault = (code: Problem['code'], message: string, hint: string): Read => ({
    value: text,
    problem: problemAt(file, cell.place, code, message, { hint }),
  })
  if (text === '') return { value: undefined }
  if (field.kind === 'yes-no')
    return { value: yes.test(text) ? true : no.test(text) ? false : text }
  if (field.kind === 'several')
    return { value: severalOf(text, field).map((part) => chosen(part, field)) }
  if (field.kind === 'day' || field.kind === 'several-days') {
    const parts = field.kind === 'day' ? [text] : severalOf(text, field)
    const read = parts.map((part) => readDay(part, days))
    const wrong = read.find((day) => typeof day !== 'string')
    if (wrong) return fault('schema/format', wrong.message, wrong.hint)
    const texts = read.filter((day) => typeof day === 'string')
    return { value: field.kind === 'day' ? texts[0] : texts }
  }
  if (field.kind === 'words') return { value: chosen(text, field) }
  const number = numbers.known.has(text) ? text : withPoint(cell, numbers)
  return typeof number === 'string'
    ? { value: numberOf(number, field, unit) }
    : fault(number.code, number.message, number.hint)
}

/** A telephone that the workbook keeps as a number: a zero in front is gone. */
export const lostZero = (cell: GridCell, field: Field, file: SourceFile): Problem[] =>
  cell.kind === 'number' && /(^|\.)(phone|number)$/.test(field.key)
    ? [
        problemAt(file, cell.place, 'facility/odd', 'this telephone was kept as a number', {
          hint: 'where it begins with 0, the 0 is gone: set the cell to text and type it again',
          severity: 'warning',
        }),
      ]
    : []
