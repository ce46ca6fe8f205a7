import { describe, expect, it } from 'vitest'
import { fillSlots, slotsIn } from '../../../src/print/binder/slots.ts'

const listed = (...ids: readonly string[]) =>
  `<p>${ids.map((id, i) => `<span class="at">${i > 0 ? ', ' : ''}<a class="ref" href="#${id}" data-page-of="${id}"></a></span>`).join('')}</p>`

describe('slots for page numbers', () => {
  it('are found once each', () => {
    expect(slotsIn(`<span data-page-of="a"></span>${listed('a', 'b')}`)).toEqual(['a', 'b'])
  })

  it('say a page once, however many places stand on it', () => {
    const text = fillSlots(listed('a', 'b', 'c') + listed('d'), {
      a: '1-1',
      b: '1-1',
      c: '1-2',
      d: '1-2',
    })
    expect(text.replace(/<[^>]*>/g, '')).toBe('1-1, 1-21-2')
    const far = fillSlots(listed('a', 'b', 'c'), { a: '5-1', b: '1-2', c: '5-1' })
    expect(far.replace(/<[^>]*>/g, '')).toBe('5-1, 1-2')
  })
})
