import { describe, expect, it } from 'vitest'
import { labelRanges, pageLabel, roman } from '../../../src/print/binder/page-numbers.ts'

describe('page numbers', () => {
  it.each([
    [1, 'i'],
    [4, 'iv'],
    [9, 'ix'],
    [14, 'xiv'],
    [40, 'xl'],
    [99, 'xcix'],
  ])('%d is %s in the front', (n, text) => {
    expect(roman(n)).toBe(text)
  })

  it('begin anew in every part, behind its divider', () => {
    const numbering = { number: 3, unnumbered: 2 }
    expect([0, 1, 2, 11].map((p) => pageLabel(numbering, p))).toEqual(['3', '', '3-1', '3-10'])
    expect(labelRanges(numbering, 20)).toEqual([
      { start: 20, style: 'none', prefix: '3', first: 1 },
      { start: 21, style: 'none', prefix: '', first: 1 },
      { start: 22, style: 'decimal', prefix: '3-', first: 1 },
    ])
  })
})
