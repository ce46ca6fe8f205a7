/** What a spreadsheet would take for a formula, with the apostrophes that stand before it. */
const formula = /^'*[=+\-@\t\r]/

const number = /^-?\d+(?:\.\d+)?$/

/**
 * A text as it stands in a cell: what a spreadsheet would take for a formula gets an apostrophe in
 * front, as the Open Worldwide Application Security Project advises on CSV injection.
 */
export const harmless = (text: string): string =>
  formula.test(text) && !number.test(text) ? `'${text}` : text

/** The text of such a cell, as it was before. */
export const asWritten = (cell: string): string =>
  cell.startsWith("'") && formula.test(cell) ? cell.slice(1) : cell
