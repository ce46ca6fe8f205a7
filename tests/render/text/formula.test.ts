import { describe, expect, it } from 'vitest'
import { formulaHtml } from '../../../src/render/text/formula.ts'

const parts = (tex: string): number => String(formulaHtml(tex, 'x')).split('<math').length - 1

describe('a formula on a page', () => {
  it('stays on one line as far as its first equals sign leads', () => {
    expect(parts('A = b\\,c')).toBe(1)
  })

  it('may end its line before a later equals sign', () => {
    expect(parts('A = b\\,c = 12\\,\\text{ft}')).toBe(2)
  })

  it('may end it where it goes on to say what its letters are', () => {
    expect(parts('A = t(b),\\quad t(x) = x^2')).toBe(2)
    expect(parts('A = t(b),\\; t(x) = x^2 = 4')).toBe(3)
  })

  it('may end it before a sign of a long sum, and not of a short one', () => {
    const sum = Array.from({ length: 9 }, (_, i) => `0.0054817${i}\\,x^${i}`).join(' + ')
    expect(parts(`A = ${sum}`)).toBe(3)
    expect(parts('A = b + c - d')).toBe(1)
  })

  it('is never parted inside brackets', () => {
    expect(parts('A = \\sum_{i = 1} \\left(b = c = d\\right)')).toBe(1)
  })
})
