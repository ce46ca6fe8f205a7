import type { Choice, LaidSheet } from '../../edit/workbook/layout.ts'
import { columnName } from '../../read/workbook/sheet.ts'

/** The last row that a sheet can have (ECMA-376-1, as spreadsheet programs have it). */
const lastRow = 1_048_576

/** The style of cells that may be written in, by the first such cell of a sheet. */
const inputStyle = (xml: string, sheet: LaidSheet): string | undefined => {
  for (const [i, row] of sheet.rows.entries()) {
    const column = row.findIndex((cell) => cell?.role === 'input')
    if (column === -1) continue
    const name = `${columnName(column + 1)}${i + 1}`
    return new RegExp(`<c r="${name}"[^>]* s="(\\d+)"`).exec(xml)?.[1]
  }
  return undefined
}

/** Rows below those that stand ready have the style of their column. */
function withOpenColumns(xml: string, sheet: LaidSheet): string {
  const { open } = sheet
  const style = open && inputStyle(xml, sheet)
  if (!open || style === undefined) return xml
  return xml.replace(/<col ([^>]*?)\/>/g, (whole, attributes: string) => {
    const column = Number(/min="(\d+)"/.exec(attributes)?.[1])
    return column >= open.from && column <= open.to
      ? `<col ${attributes} style="${style}"/>`
      : whole
  })
}

/** What may be changed of a protected sheet: widths, heights and lines, never heads. */
const protection =
  '<sheetProtection sheet="1" formatCells="0" formatColumns="0" formatRows="0" insertRows="0" deleteRows="0" sort="0"/>'

function validation({ column, from, to, list, strict }: Choice, lists: string): string {
  const name = columnName(column)
  const source = `'${lists}'!$${columnName(list)}$1:$${columnName(list)}$`
  return [
    `<dataValidation type="list" allowBlank="1" ${strict ? 'showErrorMessage="1" ' : ''}`,
    `sqref="${name}${from}:${name}${to ?? lastRow}">`,
    `<formula1>${source}{length}</formula1></dataValidation>`,
  ].join('')
}

/**
 * A sheet with its lists to choose from and its protection, which come behind the cells in this order
 * (ECMA-376-1, 18.3.1.99).
 * @param lists Title of the sheet of choices, and how long each of its columns is.
 */
export function withRules(
  xml: string,
  sheet: LaidSheet,
  lists: { readonly title: string; readonly lengths: readonly number[] },
): string {
  if (sheet.hidden) return xml
  const choices = sheet.choices.map((choice) =>
    validation(choice, lists.title).replace(
      '{length}',
      String(lists.lengths[choice.list - 1] ?? 1),
    ),
  )
  const rules =
    choices.length === 0
      ? ''
      : `<dataValidations count="${choices.length}">${choices.join('')}</dataValidations>`
  return withOpenColumns(xml, sheet).replace('</sheetData>', `</sheetData>${protection}${rules}`)
}

/** Styles in which cells of text format, and no others, may be written in. */
export const withOpenInputs = (xml: string, textFormat: string): string =>
  xml.replace(/<xf ([^>]*?)>([\s\S]*?)<\/xf>/g, (whole, attributes: string, inner: string) =>
    new RegExp(`numFmtId="${textFormat}"`).test(attributes)
      ? `<xf ${attributes} applyProtection="1">${inner}<protection locked="0"/></xf>`
      : whole,
  )

/** The list of sheets with those hidden that nobody reads. */
export const withHidden = (xml: string, sheets: readonly LaidSheet[]): string =>
  sheets.reduce(
    (text, { title, hidden }) =>
      hidden
        ? text.replace(new RegExp(`<sheet (?=[^>]*name="${title}")`), '<sheet state="hidden" ')
        : text,
    xml,
  )
