import type { Cell, DataTable } from './tables.ts'

/**
 * A text that a spreadsheet would take for a formula gets an apostrophe in front, as the Open
 * Worldwide Application Security Project advises on CSV injection: words of a facility come from
 * people.
 */
const harmless = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text)

function cellText(cell: Cell): string {
  if (cell === null) return ''
  if (typeof cell === 'number') return String(cell)
  const text = harmless(cell)
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}

/** A table as text (RFC 4180), with the mark by which spreadsheets know UTF-8. */
export const csvText = ({ heads, rows }: DataTable): string =>
  `\ufeff${[heads, ...rows].map((row) => `${row.map(cellText).join(',')}\r\n`).join('')}`
