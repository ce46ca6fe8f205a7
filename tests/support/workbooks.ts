import { strToU8, type Zippable, zipSync } from 'fflate'
import { columnName } from '../../src/read/workbook/sheet.ts'

/** A sheet as it stands in its part: rows of XML. */
type RawSheet = { readonly name: string; readonly rows: string }

export type RawParts = {
  readonly styles?: string
  readonly strings?: string
  readonly workbook?: string
  readonly more?: Readonly<Record<string, Uint8Array>>
}

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>'
const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main'
const document = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
const packages = 'http://schemas.openxmlformats.org/package/2006/relationships'

const relation = (id: string, kind: string, target: string): string =>
  `<Relationship Id="${id}" Type="${document}/${kind}" Target="${target}"/>`
const relations = (inner: string): string =>
  `${head}<Relationships xmlns="${packages}">${inner}</Relationships>`

/** A workbook (ECMA-376-1) made of XML by hand, so that every way of writing a cell can be tried. */
export function rawWorkbook(sheets: readonly RawSheet[], parts: RawParts = {}): Uint8Array {
  const list = sheets
    .map((s, i) => `<sheet name="${s.name}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`)
    .join('')
  const texts: Record<string, string> = {
    '_rels/.rels': relations(relation('rId1', 'officeDocument', 'xl/workbook.xml')),
    'xl/workbook.xml': `${head}<workbook xmlns="${main}" xmlns:r="${document}">${parts.workbook ?? ''}<sheets>${list}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': relations(
      [
        ...sheets.map((_, i) =>
          relation(`rId${i + 1}`, 'worksheet', `worksheets/sheet${i + 1}.xml`),
        ),
        relation('rIdS', 'styles', '/xl/styles.xml'),
        relation('rIdT', 'sharedStrings', 'sharedStrings.xml'),
      ].join(''),
    ),
    'xl/styles.xml': `${head}<styleSheet xmlns="${main}">${parts.styles ?? ''}</styleSheet>`,
    'xl/sharedStrings.xml': `${head}<sst xmlns="${main}">${parts.strings ?? ''}</sst>`,
    ...Object.fromEntries(
      sheets.map((s, i) => [
        `xl/worksheets/sheet${i + 1}.xml`,
        `${head}<worksheet xmlns="${main}"><sheetData>${s.rows}</sheetData></worksheet>`,
      ]),
    ),
  }
  const files: Zippable = { ...parts.more }
  for (const [name, text] of Object.entries(texts)) files[name] = strToU8(text)
  return zipSync(files, { mtime: new Date(1980, 0, 1) })
}

/** A row of texts, written into their cells. */
const textRow = (row: number, texts: readonly string[]): string =>
  `<row r="${row}">${texts
    .map((text, i) =>
      text === ''
        ? ''
        : `<c r="${columnName(i + 1)}${row}" t="inlineStr"><is><t>${text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')}</t></is></c>`,
    )
    .join('')}</row>`

/** A sheet of texts. */
export const textSheet = (name: string, rows: readonly (readonly string[])[]): RawSheet => ({
  name,
  rows: rows.map((texts, i) => textRow(i + 1, texts)).join(''),
})
