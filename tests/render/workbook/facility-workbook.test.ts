import { strFromU8, unzipSync } from 'fflate'
import readSecond from 'read-excel-file/universal'
import { beforeAll, describe, expect, it } from 'vitest'
import { baseFor } from '../../../src/cli/workbook/standing.ts'
import { layOut } from '../../../src/edit/workbook/lay-out.ts'
import { subjects } from '../../../src/edit/workbook/subjects.ts'
import { columnName } from '../../../src/read/workbook/sheet.ts'
import { facilityWorkbook } from '../../../src/render/workbook/facility-workbook.ts'
import { demoStanding } from '../../support/filled-workbooks.ts'

/** Longest title of a sheet (ECMA-376-1, 18.2.19: 31 characters). */
const longestTitle = 31

let bytes: Uint8Array
let parts: Record<string, string>
let laid: ReturnType<typeof layOut>
beforeAll(async () => {
  const standing = await demoStanding('larkmoor')
  laid = layOut(baseFor(standing), 'us', standing.procedures)
  bytes = await facilityWorkbook(laid)
  parts = Object.fromEntries(Object.entries(unzipSync(bytes)).map(([k, v]) => [k, strFromU8(v)]))
})

const sheetXml = (title: string): string =>
  parts[`xl/worksheets/sheet${laid.sheets.findIndex((s) => s.title === title) + 1}.xml`] ?? ''

/** Attributes of the style of a cell. */
function styleOf(title: string, cell: string): string {
  const style = Number(new RegExp(`<c r="${cell}"[^>]* s="(\\d+)"`).exec(sheetXml(title))?.[1])
  const styles = /<cellXfs[^>]*>(.*)<\/cellXfs>/s.exec(parts['xl/styles.xml'] ?? '')?.[1] ?? ''
  return [...styles.matchAll(/<xf [^>]*>.*?<\/xf>/gs)][style]?.[0] ?? ''
}

describe('the workbook to fill in', () => {
  it('has a sheet for each subject, and the same bytes every time', async () => {
    const titles = subjects('us').map((s) => s.title)
    expect(laid.sheets.map((s) => s.title)).toEqual(['Read me', ...titles, 'Choices', 'as-made'])
    expect(titles.filter((t) => t.length > longestTitle || /[[\]:*?/\\']/.test(t))).toEqual([])
    expect(await facilityWorkbook(laid)).toEqual(bytes)
    expect(bytes.length).toBeLessThan(120_000)
  })

  it('says what was put in, by a second reader', async () => {
    const second = await readSecond(bytes.slice().buffer)
    for (const { sheet, data } of second) {
      const rows = laid.sheets.find((s) => s.title === sheet)?.rows ?? []
      const wanted = rows.slice(0, data.length).map((row) => row.map((c) => c?.text || null))
      const got = data.map((row) => row.map((v) => (v === null ? null : String(v))))
      expect(got.map((row) => row.filter(Boolean))).toEqual(
        wanted.map((row) => row.filter(Boolean)),
      )
    }
  })

  it('lets answers be written, as text, and heads and notes not', () => {
    for (const [i, sheet] of laid.sheets.entries()) {
      if (sheet.hidden) continue
      const xml = parts[`xl/worksheets/sheet${i + 1}.xml`] ?? ''
      expect(xml).toMatch(/<\/sheetData><sheetProtection sheet="1"/)
      for (const [r, row] of sheet.rows.slice(0, 12).entries())
        for (const [c, cell] of row.entries()) {
          if (!cell || (cell.text === '' && cell.role !== 'input')) continue
          const style = styleOf(sheet.title, `${columnName(c + 1)}${r + 1}`)
          expect([sheet.title, r, c, style.includes('locked="0"')]).toEqual([
            sheet.title,
            r,
            c,
            cell.role === 'input',
          ])
        }
    }
    const text = /numFmtId="(\d+)" formatCode="@"/.exec(parts['xl/styles.xml'] ?? '')?.[1]
    expect(text).toBeDefined()
    expect(styleOf('Depths', 'B5')).toContain(`numFmtId="${text}"`)
    // Lines below those that stand ready take the style of their column.
    const style = /<c r="B5"[^>]* s="(\d+)"/.exec(sheetXml('Depths'))?.[1]
    expect(sheetXml('Depths')).toMatch(new RegExp(`<col min="2" max="2"[^>]* style="${style}"/>`))
  })

  it('has lists to choose from, which hold exactly the choices', () => {
    const lists = laid.sheets.find((s) => s.title === 'Choices')
    const at = (title: string, cell: string): readonly string[] => {
      const found = [
        ...sheetXml(title).matchAll(
          /sqref="([A-Z]+)(\d+):[A-Z]+(\d+)"><formula1>'Choices'!\$([A-Z]+)\$1:\$[A-Z]+\$(\d+)/g,
        ),
      ]
      const [, column = '', row = '0'] = /^([A-Z]+)(\d+)$/.exec(cell) ?? []
      const one = found.find(
        (m) => m[1] === column && Number(m[2]) <= Number(row) && Number(row) <= Number(m[3]),
      )
      const list = (lists?.rows[0] ?? []).findIndex((_, i) => columnName(i + 1) === one?.[4])
      return (lists?.rows ?? []).slice(0, Number(one?.[5] ?? 0)).map((row) => row[list]?.text ?? '')
    }
    for (const subject of subjects('us')) {
      if (subject.is !== 'list') continue
      for (const [i, field] of subject.fields.entries())
        if (field.choices.length > 0)
          expect(at(subject.title, `${columnName(i + 2)}900`)).toEqual(field.choices)
    }
    expect(at('Fair', 'B11')).toEqual(['us', 'metric'])
    const water = laid.sheets.find(({ title }) => title === 'Water and crew')?.rows ?? []
    const lights = water.findIndex((row) => row[4]?.text === 'lights') + 1
    expect(at('Water and crew', `B${lights}`)).toEqual(['yes', 'no'])
    expect(at('Measurements', 'B30')).toContain('moisture of the cushion found, by dry weight')
    expect(at('Fair', 'B4')).toEqual([])
  })

  it('hides the lists and what it was made of, and nothing else', () => {
    const hidden = [
      ...(parts['xl/workbook.xml'] ?? '').matchAll(/<sheet state="hidden"[^>]*name="([^"]+)"/g),
    ]
    expect(hidden.map((m) => m[1])).toEqual(['Choices', 'as-made'])
  })

  it('has rows as high as their notes, and no column wider than a line that can be read', () => {
    for (const sheet of laid.sheets.filter((s) => !s.hidden))
      for (const width of sheet.widths) expect(width).toBeLessThanOrEqual(100)
    const heights = [...sheetXml('Machines').matchAll(/<row r="(\d+)" ht="([\d.]+)"/g)]
    expect(Number(heights[2]?.[2])).toBeGreaterThan(60)
    expect(Number(heights[4]?.[2])).toBeLessThan(80)
  })
})
