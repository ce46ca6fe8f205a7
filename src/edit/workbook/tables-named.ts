import type { TableTexts } from './base.ts'
import { cellText, valueAt } from './cell-text.ts'
import type { TableSubject } from './subjects.ts'

/** A table that a facility file names. */
export type NamedTable = {
  /** Path of the entry that names it. */
  readonly path: readonly (string | number)[]
  readonly file: string
  readonly sheet: string | undefined
  readonly by: string
}

/** The tables of a kind that a facility file names, in its order. */
export function tablesNamed(data: unknown, subject: TableSubject): readonly NamedTable[] {
  const there = valueAt(data, [subject.entry])
  const entries: readonly unknown[] = Array.isArray(there) ? there : there ? [there] : []
  return entries.flatMap((entry, i): NamedTable[] => {
    if (subject.of !== undefined && valueAt(entry, ['of']) !== subject.of) return []
    const sheet = valueAt(entry, ['sheet'])
    return [
      {
        path: Array.isArray(there) ? [subject.entry, i] : [subject.entry],
        file: cellText(valueAt(entry, ['file'])),
        sheet: sheet === undefined ? undefined : cellText(sheet),
        by: cellText(valueAt(entry, ['by'])),
      },
    ]
  })
}

/** What a table is called among all of a facility: `depths#0`. */
export const tableKey = ({ id }: Pick<TableSubject, 'id'>, index: number): string =>
  `${id}#${index}`

export const sameTexts = (a: TableTexts | undefined, b: TableTexts | undefined): boolean =>
  JSON.stringify(a) === JSON.stringify(b)

const quoted = (text: string): string =>
  /[",\r\n]|^\s|^#|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text

/** A table as text (RFC 4180). */
export const tableFileText = (texts: TableTexts): string =>
  texts.map((row) => `${row.map(quoted).join(',')}\n`).join('')
