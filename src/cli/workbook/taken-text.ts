import { cellText } from '../../edit/workbook/cell-text.ts'
import type { Counted } from '../../edit/workbook/counted.ts'
import type { Asked } from '../../edit/workbook/merge.ts'
import type { TakenIn } from '../../edit/workbook/take-in.ts'
import { entryAbout } from '../../model/entry-about.ts'
import type { Place, Problem } from '../../model/problem.ts'

const columns = (rows: readonly (readonly string[])[], indent = '  '): string[] => {
  const widths = (rows[0] ?? []).map((_, i) =>
    Math.max(0, ...rows.map((row) => row[i]?.length ?? 0)),
  )
  return rows.map((row) =>
    `${indent}${row.map((text, i) => text.padEnd(widths[i] ?? 0)).join('   ')}`.trimEnd(),
  )
}

/** `People to call   12 read, 2 not`. */
export const countedText = (counted: readonly Counted[]): string[] =>
  columns(
    counted.map(({ name, read, not }) => [name, `${read} read${not > 0 ? `, ${not} not` : ''}`]),
  )

const shortest = (text: string): string => (text.length > 60 ? `${text.slice(0, 57)}…` : text)

const shown = (value: unknown): string => {
  if (value === undefined) return 'nothing'
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.values(value).map(shown).join(', ')
    : cellText(value).replaceAll('\n', '; ')
}

const namesIn = (path: Asked['path']): readonly string[] =>
  path.filter((step) => typeof step === 'string')

/** What an entry is called, with what its group is called where that says more. */
function labelOf(path: Asked['path']): string {
  const names = namesIn(path)
  const own = entryAbout(names)?.label ?? names.join('.')
  const isInList = path.some((step) => typeof step === 'number')
  const group = isInList ? undefined : entryAbout(names.slice(0, -1))?.label
  return group === undefined || names.length < 2 ? own : `${own} (${group})`
}

/** What becomes of one entry: `B7   price of fuel   $4.10/gal → $4.30/gal`. */
function askedText({ path, value, before, place }: Asked): readonly string[] {
  const at = place.cell?.name ?? `line ${place.line}`
  if (value === undefined) return [at, labelOf(path), `${shortest(shown(before))} is taken out`]
  return before === undefined || before === null
    ? [at, labelOf(path), `new: ${shortest(shown(value))}`]
    : [at, labelOf(path), `${shortest(shown(before))} → ${shortest(shown(value))}`]
}

const sheetOf = ({ cell }: Place): string => cell?.sheet ?? ''

/** What taking in would change, sheet by sheet, all of it. */
export function changesText({ asked, tables }: Pick<TakenIn, 'asked' | 'tables'>): string[] {
  const lines = [
    ...asked.map((one) => ({ sheet: sheetOf(one.place), row: askedText(one) })),
    ...tables.map(({ file, readings, found }) => ({
      sheet: sheetOf(found.place),
      row: ['', file, `${readings} lines`],
    })),
  ]
  return [...new Set(lines.map(({ sheet }) => sheet))].flatMap((sheet) => {
    const rows = lines.filter((line) => line.sheet === sheet).map(({ row }) => row)
    return sheet === '' ? columns(rows) : [`  ${sheet}`, ...columns(rows, '    ')]
  })
}

const neededLine = ({ place, path, message }: Problem): readonly string[] => [
  place.cell ? `${place.cell.sheet}, ${place.cell.name}` : '',
  path ? labelOf(path) : message,
]

/** Why nothing could be taken in: what a facility cannot do without. */
export function neededText({ needed }: Pick<TakenIn, 'needed'>): string[] {
  if (needed.length === 0) return ['Nothing was changed: mend what is told above first.']
  const lines = columns(needed.map(neededLine))
  return ['Nothing was changed. These are needed first, and the rest can wait:', ...new Set(lines)]
}
