import { describe, expect, it } from 'vitest'
import { largeNumberHtml, quantityHtml } from '../../../src/render/text/number-html.ts'

describe('numbers in HTML', () => {
  it.each([
    ['1/2 in', '<span class="frac">1/2</span>\u00a0in'],
    ['15/16 in', '<span class="frac">15/16</span>\u00a0in'],
    ['2 11/16 in', '2<span class="thin">\u00a0</span><span class="frac">11/16</span>\u00a0in'],
    ['−13/16', '−<span class="frac">13/16</span>'],
    ['25 %', '25\u00a0%'],
    ['<b>', '&lt;b&gt;'],
  ])('sets %s', (text, expected) => {
    expect(quantityHtml(text)).toBe(expected)
  })

  it('sets hours and minutes of one size, the unit between them smaller', () => {
    expect(largeNumberHtml('1 h 25')).toBe('1\u00a0<span class="unit">h</span>\u00a025')
    expect(largeNumberHtml('10 to 29')).toBe('10\u00a0<span class="unit">to</span>\u00a029')
    expect(largeNumberHtml('2,640')).toBe('2,640')
  })
})
