import { type CsvField, type Delimiter, delimiters, readRecords } from './csv-fields.ts'

/** How a text of separated values is written, and where its first record begins. */
export type Dialect = { readonly delimiter: Delimiter; readonly from: number }

/** The line by which a spreadsheet is told the delimiter; it is no record. */
const told = /^[ \t]*"?sep=([,;|\t])"?[ \t]*(?:\r\n|\n|\r|$)/i

/** Blank lines and remarks hold no record. */
export const isRecord = ([first, ...rest]: readonly CsvField[]): boolean =>
  !(first?.text.trimStart().startsWith('#') || (rest.length === 0 && first?.text.trim() === ''))

/** Characters that are looked at to tell the delimiter: some hundreds of records. */
const looked = 20_000

/**
 * The delimiter of a text: the one that a first line `sep=;` names, else the one that gives most
 * records as many fields as the head has, two or more; of two such, the one with more fields. A
 * comma where none does.
 */
export function dialectOf(text: string): Dialect {
  const [line = '', named] = told.exec(text) ?? []
  if (named !== undefined) return { delimiter: named as Delimiter, from: line.length }
  const begin = text.slice(0, looked)
  const whole = begin.length < text.length ? begin.slice(0, begin.lastIndexOf('\n') + 1) : begin
  const scored = delimiters.map((delimiter) => {
    const records = readRecords(whole, delimiter).records.filter(isRecord)
    const width = records[0]?.length ?? 0
    const even = width < 2 ? 0 : records.filter((r) => r.length === width).length
    return { delimiter, width, even }
  })
  const best = scored.reduce((a, b) =>
    b.even > a.even || (b.even === a.even && b.width > a.width) ? b : a,
  )
  return { delimiter: best.even === 0 ? ',' : best.delimiter, from: 0 }
}
