import { csvFormatRows } from 'd3-dsv'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readRecords } from '../../src/read/csv-fields.ts'

const texts = (text: string) => readRecords(text).records.map((r) => r.map((f) => f.text))

describe('records of comma-separated values', () => {
  // The rules of RFC 4180, section 2, by their numbers.
  it.each([
    [
      '1: each record on a line',
      'a,b\r\nc,d\r\n',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      '2: the last line may have no end',
      'a,b\r\nc,d',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      '5: fields may be in quotes',
      '"a","b"\nc,d',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    ['6: quotes hold line breaks and commas', '"a","b\r\nb","c,c"\r\n', [['a', 'b\r\nb', 'c,c']]],
    ['7: a quote in quotes is doubled', '"a","b""b","c"', [['a', 'b"b', 'c']]],
    [
      'empty fields stay',
      'a,,\n,b,',
      [
        ['a', '', ''],
        ['', 'b', ''],
      ],
    ],
    ['lines may end with CR alone', 'a\rb', [['a'], ['b']]],
  ])('%s', (_, text, records) => {
    expect(texts(text)).toEqual(records)
  })

  it('reads back what a library of the same format writes', () => {
    const field = fc.string({
      unit: fc.constantFrom('a', 'ä', '"', ',', '\n', ' ', '1'),
      minLength: 1,
    })
    fc.assert(
      fc.property(
        fc.array(fc.array(field, { minLength: 2, maxLength: 3 }), { minLength: 1 }),
        (rows) => {
          // White space before an unquoted field is room between cells here, as people type it.
          const written = csvFormatRows(rows)
          expect(texts(written).map((r) => r.map((t) => t.trim()))).toEqual(
            rows.map((r) => r.map((t) => t.trim())),
          )
        },
      ),
    )
  })

  it('knows where each field stands', () => {
    const text = 'a, "b ""c""",d'
    const [record] = readRecords(text).records
    expect(record?.map(({ start, end }) => text.slice(start, end))).toEqual(['a', 'b ""c""', 'd'])
  })

  it.each([
    ['a,"b\nc,d', 'never closed', 2],
    ['a,"b" c,d', 'behind the closing quote', 5],
  ])('finds the fault in %j', (text, message, at) => {
    expect(readRecords(text).fault).toEqual({ message: expect.stringContaining(message), at })
  })
})
