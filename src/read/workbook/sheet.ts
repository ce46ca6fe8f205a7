/** A cell of a sheet as it reads, and where it stands; rows and columns count from 1. */
export type SheetCell = {
  readonly text: string
  /**
   * What the workbook keeps: words as they were typed, a number, a day or time that was a number, or
   * the mark of a formula without a result.
   */
  readonly kind: 'words' | 'number' | 'day' | 'fault'
  readonly row: number
  readonly column: number
}

/** A sheet: rows that hold something, from the top, their cells from the left. */
export type Sheet = {
  readonly name: string
  readonly rows: readonly (readonly SheetCell[])[]
}

/** What a column is called: A to Z, AA … */
export function columnName(column: number): string {
  const rest = (column - 1) % 26
  const letter = String.fromCharCode(65 + rest)
  return column <= 26 ? letter : `${columnName((column - 1 - rest) / 26)}${letter}`
}

/** What a cell is called: C7. */
export const cellName = ({ row, column }: Pick<SheetCell, 'row' | 'column'>): string =>
  `${columnName(column)}${row}`

/** Row and column of a cell by its name; undefined for what is none. */
export function cellAt(
  name: string,
): { readonly row: number; readonly column: number } | undefined {
  const [, letters, row] = /^([A-Z]{1,3})(\d{1,7})$/.exec(name) ?? []
  if (letters === undefined) return undefined
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0)
  return { row: Number(row), column }
}
