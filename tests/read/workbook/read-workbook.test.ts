import { strToU8, unzipSync, zipSync } from 'fflate'
import readSecond from 'read-excel-file/universal'
import { describe, expect, it } from 'vitest'
import writeWorkbook from 'write-excel-file/universal'
import { largestWorkbook, readWorkbook } from '../../../src/read/workbook/read-workbook.ts'
import { rawWorkbook, textSheet } from '../../support/workbooks.ts'

const read = (bytes: Uint8Array) => readWorkbook('book.xlsx', bytes)

const cellsOf = (bytes: Uint8Array, sheet = 0) =>
  (read(bytes).value?.[sheet]?.rows ?? []).flat().map((c) => `${c.text} (${c.kind})`)

const styles = [
  '<numFmts count="6"><numFmt numFmtId="164" formatCode="0.0%"/><numFmt numFmtId="165" formatCode="d\\.\\ mmm\\ yy"/>',
  '<numFmt numFmtId="166" formatCode="0.00&quot; ft&quot;"/><numFmt numFmtId="167" formatCode="[h]:mm"/>',
  '<numFmt numFmtId="168" formatCode="[Red]&quot;day&quot; 0"/><numFmt numFmtId="169" formatCode="# ?/?"/></numFmts>',
  '<cellStyleXfs><xf numFmtId="14"/></cellStyleXfs><cellXfs>',
  ...[0, 9, 14, 20, 22, 164, 165, 166, 167, 168, 169].map((id) => `<xf numFmtId="${id}"/>`),
  '</cellXfs>',
].join('')

describe('a workbook', () => {
  it('gives its sheets as a person would type them: days, times, shares, units, fractions', () => {
    const cells: readonly (readonly [style: number, value: string, text: string])[] = [
      [0, '12', '12 (number)'],
      [0, '0.30000000000000004', '0.3 (number)'],
      [0, '1E-7', '0.0000001 (number)'],
      [1, '0.07', '7 % (number)'],
      [5, '0.071', '7.1 % (number)'],
      [2, '46550', '2027-06-12 (day)'],
      [6, '46550', '2027-06-12 (day)'],
      [3, '0.5625', '13:30 (day)'],
      [4, '46550.5625', '2027-06-12 13:30 (day)'],
      [7, '2.5', '2.5 ft (number)'],
      [8, '1.3125', '31:30 (day)'],
      [9, '3', '3 (number)'],
      [10, '0.25', '0.25 (number)'],
      [2, '1', '1900-01-01 (day)'],
    ]
    const row = cells.map(([style, value]) => `<c s="${style}"><v>${value}</v></c>`).join('')
    const bytes = rawWorkbook([{ name: 'All', rows: `<row r="1">${row}</row>` }], { styles })
    expect(cellsOf(bytes)).toEqual(cells.map(([, , text]) => text))
  })

  it('counts days from 1904 where it says so', () => {
    const rows = '<row r="1"><c r="A1" s="2"><v>45088</v></c></row>'
    const bytes = rawWorkbook([{ name: 'A', rows }], {
      styles,
      workbook: '<workbookPr date1904="1"/>',
    })
    expect(cellsOf(bytes)).toEqual(['2027-06-12 (day)'])
  })

  it('reads shared and rich strings without reading aids, and results of formulas, never formulas', () => {
    const strings =
      '<si><t xml:space="preserve"> plain &amp; simple</t></si><si><r><t>Dr. </t></r><r><rPr><b/></rPr><t>Abbott</t></r><rPh sb="0" eb="1"><t>aid</t></rPh></si>'
    const rows = [
      '<row r="2"><c r="B2" t="s"><v>0</v></c><c r="D2" t="s"><v>1</v></c></row>',
      '<row r="5"><c r="A5"><f>1+1</f><v>2</v></c><c r="B5" t="str"><f>"a"</f><v>a</v></c><c r="C5" t="b"><v>1</v></c>',
      '<c r="D5" t="e"><f>1/0</f><v>#DIV/0!</v></c><c r="E5"><f>NOW()</f></c></row>',
    ].join('')
    const bytes = rawWorkbook([{ name: 'A', rows }], { strings })
    expect(cellsOf(bytes)).toEqual([
      ' plain & simple (words)',
      'Dr. Abbott (words)',
      '2 (number)',
      'a (words)',
      'yes (words)',
      '#DIV/0! (fault)',
      ' (fault)',
    ])
    expect(read(bytes).value?.[0]?.rows[0]).toMatchObject([
      { row: 2, column: 2 },
      { row: 2, column: 4 },
    ])
  })

  it('reads what another program wrote, as a second reader does', async () => {
    const file = writeWorkbook([
      {
        sheet: 'Numbers & words',
        data: [
          ['station', 'date', 'ready'],
          [
            1.25,
            { value: new Date(Date.UTC(2027, 5, 12)), type: Date, format: 'yyyy-mm-dd' },
            true,
          ],
        ],
      },
      { sheet: 'Second', data: [['only']] },
    ])
    const bytes = new Uint8Array(await (await file.toBlob()).arrayBuffer())
    const second = await readSecond(bytes.buffer)
    const texts = (read(bytes).value ?? []).map((s) => ({
      sheet: s.name,
      data: s.rows.map((row) => row.map((c) => c.text)),
    }))
    const shown = (value: unknown): unknown =>
      value instanceof Date
        ? value.toISOString().slice(0, 10)
        : value === true
          ? 'yes'
          : String(value)
    expect(texts).toEqual(second.map((s) => ({ ...s, data: s.data.map((r) => r.map(shown)) })))
  })
})

/** A workbook with one of its parts exchanged. */
const withPart = (bytes: Uint8Array, name: string, text: string): Uint8Array =>
  zipSync({ ...unzipSync(bytes), [name]: strToU8(text) })

describe('a hostile workbook is refused with what it is', () => {
  const sound = rawWorkbook([textSheet('A', [['a'], ['b']])])
  const refusal = (bytes: Uint8Array): string => {
    const { value, problems } = read(bytes)
    expect(value).toBeUndefined()
    expect(problems).toMatchObject([{ code: 'file/format', place: { file: 'book.xlsx' } }])
    return problems[0]?.message ?? ''
  }

  it('where it unpacks to far more than it is', () => {
    // What no reader of a workbook asks for is never unpacked.
    const beside = rawWorkbook([textSheet('A', [['a']])], {
      more: { 'xl/media/image.bin': new Uint8Array(30 * 1024 * 1024) },
    })
    expect(beside.length).toBeLessThan(largestWorkbook)
    expect(cellsOf(beside)).toEqual(['a (words)'])
    const cells = `<row r="1"><c r="A1" t="inlineStr"><is><t>${' '.repeat(17 * 1024 * 1024)}</t></is></c></row>`
    expect(refusal(rawWorkbook([{ name: 'A', rows: cells }]))).toContain('unpacks to more')
  })

  it('where it lies about the sizes of its parts', () => {
    const cells = `<row r="1"><c r="A1" t="inlineStr"><is><t>${' '.repeat(17 * 1024 * 1024)}</t></is></c></row>`
    const bytes = rawWorkbook([{ name: 'A', rows: cells }])
    const view = new DataView(bytes.buffer)
    // Every size before packing, in the list of parts and before the parts themselves, becomes ten.
    for (let at = 0; at + 30 < bytes.length; at++) {
      const mark = view.getUint32(at, true)
      if (mark === 0x02014b50) view.setUint32(at + 24, 10, true)
      if (mark === 0x04034b50) view.setUint32(at + 22, 10, true)
    }
    expect(refusal(bytes)).toContain('unpacks to more')
  })

  it('where it declares entities', () => {
    const laughs =
      '<!DOCTYPE sst [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;">]><sst><si><t>&b;</t></si></sst>'
    const bytes = rawWorkbook([textSheet('A', [['a']])])
    expect(refusal(withPart(bytes, 'xl/sharedStrings.xml', laughs))).toContain('entities')
  })

  it('where it has thousands of sheets, of parts or of cells', () => {
    const many = Array.from({ length: 201 }, (_, i) => textSheet(`S${i}`, [['a']]))
    expect(refusal(rawWorkbook(many))).toContain('more than 200 sheets')
    const parts = Array.from({ length: 2000 }, (_, i) => [`more/${i}`, new Uint8Array(0)] as const)
    expect(refusal(rawWorkbook(many, { more: Object.fromEntries(parts) }))).toContain('more parts')
    const row = `<row>${'<c><v>1</v></c>'.repeat(1000)}</row>`
    expect(refusal(rawWorkbook([{ name: 'A', rows: row.repeat(101) }]))).toContain('cells')
  })

  it('where it is another document, damaged, locked, or cut off', () => {
    expect(refusal(zipSync({ 'word/document.xml': strToU8('<a/>') }))).toContain('no workbook')
    expect(refusal(strToU8('station,depth\n1,2\n'))).toContain('damaged')
    expect(refusal(new Uint8Array(0))).toContain('damaged')
    expect(
      refusal(withPart(sound, 'xl/worksheets/sheet1.xml', '<worksheet><sheetData>')),
    ).toContain('damaged')
    const locked = sound.slice()
    const list = locked.findIndex(
      (_, i) => locked[i] === 0x50 && locked[i + 1] === 0x4b && locked[i + 2] === 1,
    )
    locked[list + 8] = 1
    expect(refusal(locked)).toContain('password')
    for (let cut = 1; cut < sound.length; cut += 37) refusal(sound.subarray(0, sound.length - cut))
  })

  it('or read, whatever byte of it is changed, without ending in an error of the program', () => {
    for (let at = 0; at < sound.length; at++) {
      const bytes = sound.slice()
      bytes[at] = (bytes[at] ?? 0) ^ 0x55
      expect(() => read(bytes)).not.toThrow()
    }
  })
})
