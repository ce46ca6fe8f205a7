import { describe, expect, it } from 'vitest'
import { numbersBehind, plainNumber, resultOf } from '../../../src/render/text/worked.ts'

describe('numbers behind their formula', () => {
  it('do not repeat its symbol', () => {
    expect(numbersBehind('a = b + c', 'a = 1 + 2 = 3')).toBe(' = 1 + 2 = 3')
  })

  it('are the result alone where no number was put in', () => {
    expect(numbersBehind('n = \\sum_i 1', 'n = \\sum_i 1 = 24')).toBe(' = 24')
  })

  it('stay whole where the formula says something of its own letters', () => {
    const tex = 't = t(a),\\quad t(D) = 2 D'
    const numbers = 't = t(3),\\quad t(D) = 2 D = 6'
    expect(numbersBehind(tex, numbers)).toBe(numbers)
  })
})

describe('the result of a formula', () => {
  it('stands behind the last equals sign', () => {
    expect(resultOf('a = 1 + 2 = 3\\,\\text{ft}')).toBe('3\\,\\text{ft}')
  })

  it.each([
    ['2{,}640\\,\\text{ft}', '2,640 ft'],
    ['-1.725\\,\\text{\\%}', '−1.725 %'],
    ['1\\tfrac{1}{4}\\,\\text{in}', '1 1/4 in'],
    ['\\text{\\$}4{,}278.19', '$4,278.19'],
  ])('is compared as plain letters: %s', (tex, printed) => {
    expect(plainNumber(tex)).toBe(printed.replaceAll(' ', ''))
  })
})
