import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { partOf, readPart } from '../../../src/cli/many/part.ts'

describe('a part', () => {
  it('is read from its number and how many there are', () => {
    expect(readPart('3/8')).toEqual({ number: 3, of: 8 })
    expect(readPart('1/1')).toEqual({ number: 1, of: 1 })
    for (const text of [
      '0/8',
      '9/8',
      '3',
      '3/',
      '/8',
      '3/0',
      '-1/8',
      '1/20000',
      'a/b',
      '3/8/9',
      ' 3/8',
    ])
      expect(readPart(text)).toBeUndefined()
  })

  it('takes each facility exactly once, whatever else is listed', () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: 1, max: 10_000 }), (id, of) => {
        const part = partOf(id, of)
        expect(Number.isInteger(part)).toBe(true)
        expect(part).toBeGreaterThanOrEqual(1)
        expect(part).toBeLessThanOrEqual(of)
        expect(partOf(id, of)).toBe(part)
      }),
    )
  })

  it('is the same on every machine and in every version of the program', () => {
    // `printf %s larkmoor | sha256sum` begins with e04d268911d1, brambleford with cb181cc0fa95,
    // ostmere with 277ffd7923e1. By 8 only the last of these digits counts: 1, 5 and 1 are left.
    expect(['larkmoor', 'brambleford', 'ostmere'].map((id) => partOf(id, 8))).toEqual([2, 6, 2])
  })

  it('is about as large as the others', () => {
    const sizes = Array.from({ length: 8 }, () => 0)
    for (let i = 0; i < 4000; i++) {
      const part = partOf(`fair-${i}`, 8) - 1
      sizes[part] = (sizes[part] ?? 0) + 1
    }
    // 500 each; five standard deviations of a binomial distribution are 105.
    for (const size of sizes) expect(Math.abs(size - 500)).toBeLessThan(105)
  })
})
