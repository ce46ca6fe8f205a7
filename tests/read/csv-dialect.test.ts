import { describe, expect, it } from 'vitest'
import { dialectOf } from '../../src/read/csv-dialect.ts'

describe('what stands between the cells of a table', () => {
  it.each([
    ['a,b,c\n1,2,3\n', ','],
    ['a;b;c\n1,5;2,5;3\n', ';'],
    ['a\tb\n1,5\t2,5\n', '\t'],
    ['a|b\n1|2\n', '|'],
    ['one\n1\n', ','],
    // Commas inside words of a table parted by tabs.
    ['note\tby\nsoft, wet\tA\nhard, dry\tB\n', '\t'],
    ['# a remark, with commas, in it\na;b\n1;2\n', ';'],
    ['"a;b",c\n"1;2",3\n', ','],
  ])('is told from all of its lines: %j', (text, delimiter) => {
    expect(dialectOf(text)).toEqual({ delimiter, from: 0 })
  })

  it('is what a first line says, which is no record', () => {
    expect(dialectOf('sep=;\r\na,b;c\r\n')).toEqual({ delimiter: ';', from: 7 })
    expect(dialectOf(' sep=\t\na\tb\n')).toEqual({ delimiter: '\t', from: 7 })
  })
})
