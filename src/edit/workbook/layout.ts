/** What a cell is for, which decides how it looks and whether it may be written in. */
export type CellRole =
  | 'title'
  | 'head'
  | 'group'
  | 'label'
  | 'needed'
  | 'note'
  | 'example'
  | 'name'
  | 'input'
  /** To be written in too, and not printed while it is empty. */
  | 'spare'

export type LaidCell = { readonly text: string; readonly role: CellRole } | undefined

/** A list to choose from, and what is said where a cell is chosen; rows and columns count from 1. */
export type Choice = {
  readonly column: number
  readonly from: number
  /** The last row; to the end of the sheet where there is none. */
  readonly to: number | undefined
  /** Column of the sheet of choices; 0 where there is nothing to choose. */
  readonly list: number
  /** Whether other words are refused: not where several may stand. */
  readonly strict: boolean
}

/** A sheet of the workbook before it is written. */
export type LaidSheet = {
  readonly title: string
  /** Widths of its columns in characters. */
  readonly widths: readonly number[]
  readonly rows: readonly (readonly LaidCell[])[]
  /** Rows and columns that stay in sight. */
  readonly heads: { readonly rows: number; readonly columns: number }
  readonly choices: readonly Choice[]
  /** Columns whose further rows may be written in. */
  readonly open: { readonly from: number; readonly to: number } | undefined
  readonly hidden: boolean
  /** Columns that are printed; what only the program reads stands behind them. */
  readonly printed: number
}

export type Laid = {
  readonly sheets: readonly LaidSheet[]
  /** On which it is printed. */
  readonly paper: 'letter' | 'a4'
}
