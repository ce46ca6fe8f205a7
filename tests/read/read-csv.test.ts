import { describe, expect, it } from 'vitest'
import { readCsv } from '../../src/read/read-csv.ts'

const read = (text: string) => readCsv({ path: 'depths.csv', text })

describe('a table of comma-separated values', () => {
  it('gives cells with the places where they stand, blank lines and remarks left out', () => {
    const { value } = read('# by hand\nstation,depth\n\n100, 1 1/2 in\r\n"1,200 ft",2 in\n')
    expect(value?.head.map((c) => c.text)).toEqual(['station', 'depth'])
    expect(value?.rows.map((r) => r.map((c) => c.text))).toEqual([
      ['100', '1 1/2 in'],
      ['1,200 ft', '2 in'],
    ])
    expect(value?.rows[0]?.[1]?.place).toMatchObject({ line: 4, column: 6, length: 8 })
    expect(value?.rows[1]?.[1]?.place).toMatchObject({ line: 5, column: 12 })
  })

  it('keeps the place of cells behind a quoted line break, and reads such a cell as one line', () => {
    const { value } = read('station,note,depth\n100,"soft\nhere",2 in\n200,,1 in\n')
    expect(value?.rows[0]?.map((c) => c.text)).toEqual(['100', 'soft here', '2 in'])
    expect(value?.rows[0]?.[2]?.place).toMatchObject({ line: 3, column: 7 })
    expect(value?.rows[1]?.[0]?.place).toMatchObject({ line: 4, column: 1 })
  })

  it('takes no byte order mark for a part of the head', () => {
    const { value } = read('\uFEFFstation,depth\n1,2\n')
    expect(value?.head[0]).toMatchObject({ text: 'station', place: { line: 1, column: 2 } })
  })

  it('points at the quote that is not closed', () => {
    expect(read('a,b\n1,"2\n3,4\n').problems).toMatchObject([
      { code: 'file/format', place: { line: 2, column: 3 } },
    ])
  })

  it('reports a row with another number of cells, and a table without rows', () => {
    expect(read('a,b\n1,2\n1,200,3\n').problems).toMatchObject([
      { code: 'schema/format', place: { line: 3, column: 1 }, source: '1,200,3' },
    ])
    expect(read('a,b\n').problems).toMatchObject([{ code: 'file/empty' }])
  })

  it('is refused where it is a document or a page under another name', () => {
    for (const text of ['{\\rtf1 station,depth}', '<html>\n<table></table></html>\n']) {
      const { value, problems } = read(text)
      expect(value).toBeUndefined()
      expect(problems[0]?.code).toBe('file/format')
      expect(problems[0]?.hint).toContain('as CSV')
    }
  })
})
