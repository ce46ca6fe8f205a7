import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { Sheet } from '../../read/workbook/sheet.ts'
import { valueAt } from './cell-text.ts'

/** Texts of a table of readings: its head, then its rows. */
export type TableTexts = readonly (readonly string[])[]

/**
 * What a workbook was made of: the data of the facility file, and its tables by sheet. By it what
 * somebody has changed in the workbook is told from what has been changed in the file meanwhile.
 */
export type Base = { readonly data: unknown; readonly tables: Readonly<Record<string, TableTexts>> }

/** The sheet that carries it, which nobody sees. */
export const baseSheet = 'as-made'
const mark = 'ovalkeep-workbook 1'

/** Characters in a cell at most (ECMA-376-1, as spreadsheet programs have it: 32,767). */
const longest = 30_000

/** Letters that a cut between two cells could not tear apart. */
const plainLetters = (json: string): string =>
  json.replace(/[^\x20-\x7e]/g, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`)

/** The texts of the sheet, one in each row. */
export function baseTexts(base: Base): readonly string[] {
  const text = plainLetters(JSON.stringify(base))
  const parts = Array.from({ length: Math.ceil(text.length / longest) }, (_, i) =>
    text.slice(i * longest, (i + 1) * longest),
  )
  return [mark, ...parts.map((part) => `:${part}`)]
}

/** What a workbook was made of; undefined for one that was not made here. */
export function baseOf(sheets: readonly Sheet[]): Base | undefined {
  const sheet = sheets.find((s) => s.name === baseSheet)
  const [first, ...rest] = (sheet?.rows ?? []).map((row) => row[0]?.text ?? '')
  if (first !== mark) return undefined
  try {
    // Somebody may have changed it by hand; what it says is only ever compared.
    return JSON.parse(rest.map((part) => part.slice(1)).join('')) as Base
  } catch {
    return undefined
  }
}

/** What the facility prints on, else what is usual where its units are. */
export function paperOf({ data }: Base, system: UnitSystem): 'letter' | 'a4' {
  const said = valueAt(data, ['paper'])
  if (said === 'letter' || said === 'a4') return said
  return system === 'us' ? 'letter' : 'a4'
}
