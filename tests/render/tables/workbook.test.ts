import { readSheet } from 'read-excel-file/node'
import { describe, expect, it } from 'vitest'
import { dataTables } from '../../../src/render/tables/tables.ts'
import { workbookOf } from '../../../src/render/tables/workbook.ts'
import { demoManual } from '../../support/demo.ts'

describe('the workbook', () => {
  it('is read back by another program, cell by cell', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const tables = dataTables(manual, words)
    const book = Buffer.from(await workbookOf(tables))
    for (const { title, heads, rows } of tables) {
      const sheet = await readSheet(book, title)
      expect(sheet[0]).toEqual(heads)
      expect(sheet).toHaveLength(rows.length + 1)
      expect(sheet[1]?.map((c) => c ?? '')).toEqual(rows[0]?.map((c) => c ?? ''))
    }
  })

  it('has the same bytes each time', async () => {
    const table = { id: 'a', title: 'A [b]: c/d', heads: ['x'], rows: [[1], ['=1+1'], [null]] }
    const first = await workbookOf([table])
    expect(Buffer.from(await workbookOf([table])).equals(Buffer.from(first))).toBe(true)
  })
})
