import { describe, expect, it } from 'vitest'
import { quantityHtml } from '../../../src/render/text/number-html.ts'

describe('numbers in HTML', () => {
  it.each([
    ['1/2 in', '<span class="frac">1/2</span>\u00a0in'],
    ['25 %', '25\u00a0%'],
    ['<b>', '&lt;b&gt;'],
  ])('sets %s', (text, expected) => {
    expect(quantityHtml(text)).toBe(expected)
  })
})
