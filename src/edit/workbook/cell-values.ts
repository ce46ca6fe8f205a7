import { factAt } from '../../model/entry-about.ts'
import type { Problem } from '../../model/problem.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import { problemAt, type SourceFile } from '../../read/source-file.ts'
import { isYearless, withYear } from '../../validate/fair-year.ts'
import { type DayStyle, readDay } from '../../validate/imports/day-style.ts'
import { type NumberStyle, withPoint } from '../../validate/imports/number-style.ts'
import { asKey, choiceCalled } from '../../validate/schema-advice/near-name.ts'
import { withUnit } from '../form/typed-quantity.ts'
import { isUnclearTime, unclearTime } from '../form/typed-time.ts'
import type { Value } from '../written.ts'
import { severalOf } from './cell-text.ts'
import type { Field } from './fields.ts'
import type { GridCell } from './grid.ts'
import { saidInCell } from './said-in-cell.ts'

/** How the cells of a file are written. */
export type CellStyles = {
  /** Of numbers that somebody typed; those that stood there before are read as the file has them. */
  readonly numbers: NumberStyle & { readonly known: ReadonlySet<string> }
  readonly days: DayStyle
  /** Of the fair, where it can be told: a day without a year is taken to be in it. */
  readonly fairYear: string | undefined
  /** Titles of the procedures that there are, by id. */
  readonly procedures: ReadonlyMap<string, string>
  /** In which a number is meant that says no unit; nothing where nobody has said yet. */
  readonly locale: Locale | undefined
}

const bare = /^-?\d+(?:\.\d+)?$/
const yes = /^(?:yes|y|true|x|✓)$/i
const no = /^(?:no|n|false|-)$/i

/** What a cell says; where it cannot be read, its text all the same, with the problem. */
type Read = { readonly value: Value | undefined; readonly problem?: Problem }

function numberOf(text: string, field: Field, unit: string, locale: Locale | undefined): Value {
  if (field.kind === 'number') return bare.test(text) ? Number(text) : text
  const fact = unit === '' && locale ? factAt(field.path) : undefined
  if (fact && locale) {
    const said = withUnit(fact, text, locale)
    if (said !== text) return said
  }
  // What has a unit in its head is that many of them.
  if (unit !== '' && /^[-+.\d][\d.,/ -]*$/.test(text)) return `${text} ${unit}`
  return bare.test(text) ? Number(text) : text
}

const chosen = (text: string, { choices }: Field): string =>
  choices.length === 0 ? text : (choiceCalled(text, choices) ?? text)

/** Whether people choose it among the titles of procedures. */
export const isProcedure = ({ path }: Field): boolean => path.join('.') === 'notes.procedure'

const small = (text: string): string => text.trim().toLowerCase()

/** A procedure by its title; what is none comes back. */
const procedureCalled = (text: string, procedures: ReadonlyMap<string, string>): string =>
  [...procedures].find(([id, title]) => small(title) === small(text) || id === text)?.[0] ?? text

/** What a spreadsheet takes for a day: 3/4, of which it keeps the fourth of March. */
function fractionTaken(text: string): string | undefined {
  const [, month = '', day = ''] = /^\d{4}-(\d\d)-(\d\d)/.exec(text) ?? []
  return month === '' ? undefined : `${Number(month)}/${Number(day)}`
}

/**
 * What a cell says of an entry, as it stands in the facility file; nothing for an empty cell. Whether
 * it can be so is asked later, of all entries together.
 * @param unit Of the column, where its head gives one.
 */
export function readValue(
  cell: GridCell,
  field: Field,
  file: SourceFile,
  { numbers, days, fairYear, procedures, locale }: CellStyles,
  unit = '',
): Read {
  const isKnown = numbers.known.has(cell.text)
  const said = isKnown ? { text: cell.text, isRough: false } : saidInCell(cell.text, field)
  const { text } = said
  const fault = (code: Problem['code'], message: string, hint: string): Read => ({
    value: text,
    problem: problemAt(file, cell.place, code, message, { hint }),
  })
  if (text === '') return { value: undefined }
  if (field.kind === 'quantity' && cell.kind === 'day') {
    const fraction = fractionTaken(text)
    return fault(
      'quantity/number',
      'the spreadsheet took a fraction for a day here',
      fraction === undefined
        ? 'type it again, with its unit'
        : `type ${fraction} again, with its unit`,
    )
  }
  if (isUnclearTime(text, field.path.at(-1)) && !isKnown)
    return fault('schema/format', ...unclearTime(text))
  if (field.kind === 'yes-no')
    return { value: yes.test(text) ? true : no.test(text) ? false : text }
  if (field.kind === 'several')
    return { value: severalOf(text, field).map((part) => chosen(part, field)) }
  if (field.kind === 'day' || field.kind === 'several-days') {
    const parts = field.kind === 'day' ? [text] : daysOf(text)
    const inYear = (part: string): boolean => fairYear !== undefined && isYearless(part)
    const read = parts.map((part) =>
      readDay(inYear(part) ? withYear(part, fairYear ?? '') : part, days),
    )
    const wrong = read.find((day) => typeof day !== 'string')
    if (wrong) return fault('schema/format', wrong.message, wrong.hint)
    const texts = read.filter((day) => typeof day === 'string')
    const value = field.kind === 'day' ? texts[0] : texts
    return parts.some(inYear)
      ? { value, problem: yearTaken(file, cell, texts.join(', ')) }
      : { value }
  }
  if (field.kind === 'words')
    return { value: isProcedure(field) ? procedureCalled(text, procedures) : chosen(text, field) }
  const number = isKnown ? text : withPoint({ ...cell, text }, numbers)
  if (typeof number !== 'string') return fault(number.code, number.message, number.hint)
  const value = numberOf(chosen(number, field), field, unit, locale)
  if (said.isRough && field.kind === 'quantity') return { value: `about ${value}` }
  const hasUnit = field.kind === 'quantity' && unit === '' && bare.test(number) && value !== number
  if (hasUnit && typeof value === 'string') return { value, problem: unitTaken(file, cell, value) }
  return said.isRough ? { value, problem: roughProblem(file, cell, String(value)) } : { value }
}

/** A number without its unit: it is taken in the one that is usual here, and told. */
const unitTaken = (file: SourceFile, cell: GridCell, value: string): Problem =>
  problemAt(file, cell.place, 'facility/odd', `${cell.text} is entered as ${value}`, {
    hint: 'if it was meant in another unit, write that behind the number',
    severity: 'warning',
  })

/** A day without its year: it is taken to be in that of the fair, and told. */
const yearTaken = (file: SourceFile, cell: GridCell, value: string): Problem =>
  problemAt(file, cell.place, 'facility/odd', `${cell.text} is entered as ${value}`, {
    hint: 'that is the year of the fair; if another one was meant, write it behind the day',
    severity: 'warning',
  })

/** A number that somebody has not measured: it is taken, and told. */
const roughProblem = (file: SourceFile, cell: GridCell, value: string): Problem =>
  problemAt(
    file,
    cell.place,
    'facility/odd',
    `"${cell.text}" is entered as ${value}: the file takes one value`,
    { hint: 'measure it when you can, and write what you find', severity: 'warning' },
  )

/** Several days in a cell: 6/22/2027 and 7/27/2027. */
const daysOf = (text: string): readonly string[] =>
  text
    .split(/[;&\r\n]|\band\b|,(?=\s*\d{1,4}[/.-])/)
    .map((part) => part.trim())
    .filter((part) => part !== '')

/** A role that was called by another name: it is said which one was taken. */
export const guessedRole = (
  cell: GridCell,
  field: Field,
  file: SourceFile,
  value: unknown,
): Problem[] =>
  field.key === 'role' && field.choices.includes(String(value)) && value !== asKey(cell.text)
    ? [
        problemAt(file, cell.place, 'facility/odd', `"${cell.text}" is taken for ${value}`, {
          hint: `if that is wrong, choose another: ${field.choices.join(', ')}`,
          severity: 'warning',
        }),
      ]
    : []

/** Numbers that are whole as they stand: of ten digits, and what is dialed in need. */
const wholeNumber = /^(?:[2-9]\d{9}|911|112|999)$/

/** A telephone that the workbook keeps as a number: a zero in front is gone. */
export const lostZero = (cell: GridCell, field: Field, file: SourceFile): Problem[] =>
  cell.kind === 'number' && /(^|\.)(phone|number)$/.test(field.key) && !wholeNumber.test(cell.text)
    ? [
        problemAt(file, cell.place, 'facility/odd', 'this telephone was kept as a number', {
          hint: 'where it begins with 0, the 0 is gone: set the cell to text and type it again',
          severity: 'warning',
        }),
      ]
    : []
