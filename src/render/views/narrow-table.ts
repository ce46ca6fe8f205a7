/** Letters in half a page's width, with the space between columns. */
const halfPage = 46
const columnSpace = 2

/**
 * Whether a table is read as well at half the width, so that two may stand side by side: heads may
 * end their lines between words, cells stay on one line.
 * @param heads Plain words.
 * @param rows Cells as plain words; a column of empty ones is there to be written in.
 */
export function isNarrow(heads: readonly string[], rows: readonly (readonly string[])[]): boolean {
  const widths = heads.map((head, at) => {
    const cells = rows.map((row) => row[at] ?? '')
    const toFill = cells.every((text) => text === '') ? halfPage : 0
    const words = head.split(' ').map((word) => word.length)
    return Math.max(toFill, ...words, ...cells.map((text) => text.length))
  })
  return widths.reduce((sum, width) => sum + width + columnSpace, 0) <= halfPage
}
