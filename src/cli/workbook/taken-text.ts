import { cellText } from '../../edit/workbook/cell-text.ts'
import type { Asked } from '../../edit/workbook/merge.ts'
import type { Counted, TakenIn } from '../../edit/workbook/take-in.ts'

const columns = (rows: readonly (readonly [string, string])[]): string[] => {
  const width = Math.max(0, ...rows.map(([name]) => name.length))
  return rows.map(([name, text]) => `  ${name.padEnd(width)}   ${text}`)
}

/** `People to call   12 read, 2 not`. */
export const countedText = (counted: readonly Counted[]): string[] =>
  columns(
    counted.map(
      ({ name, read, not }) => [name, `${read} read${not > 0 ? `, ${not} not` : ''}`] as const,
    ),
  )

const shortest = (text: string): string => (text.length > 60 ? `${text.slice(0, 57)}…` : text)

const shown = (value: unknown): string => {
  if (value === undefined) return 'nothing'
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.values(value).map(cellText).join(', ')
    : cellText(value).replaceAll('\n', '; ')
}

/** What becomes of one entry: `prices.fuel   $4.10/gal → $4.30/gal`. */
function askedText({ path, value, before }: Asked): readonly [string, string] {
  const name = path.map((step) => (typeof step === 'number' ? step + 1 : step)).join('.')
  if (value === undefined) return [name, `${shortest(shown(before))} is taken out`]
  return before === undefined || before === null
    ? [name, `new: ${shortest(shown(value))}`]
    : [name, `${shortest(shown(before))} → ${shortest(shown(value))}`]
}

const mostShown = 40

/** What taking in would change, line by line; long lists are cut. */
export function changesText({ asked, tables }: Pick<TakenIn, 'asked' | 'tables'>): string[] {
  const lines = columns([
    ...asked.map(askedText),
    ...tables.map(({ file, readings }) => [file, `${readings} lines`] as const),
  ])
  const more = lines.length - mostShown
  return more > 0 ? [...lines.slice(0, mostShown), `  … and ${more} more`] : lines
}
