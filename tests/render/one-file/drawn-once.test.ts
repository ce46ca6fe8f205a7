import { describe, expect, it } from 'vitest'
import { drawnOnce, onePicture } from '../../../src/render/one-file/drawn-once.ts'

const inside = `<path d="${'m1 1'.repeat(50)}"/>`
const drawing = `<svg viewBox="0 0 9 9" aria-label="a track">${inside}</svg>`

describe('drawings of the manual in one file', () => {
  it('are given once, and shown by their name wherever they stand', () => {
    const { pages, drawings } = drawnOnce([`<p>${drawing}</p>`, drawing, '<svg>own</svg>'])
    expect(drawings.split(inside)).toHaveLength(2)
    const shown = `<svg viewBox="0 0 9 9" aria-label="a track"><use href="#drawn~1"/></svg>`
    expect(pages).toEqual([`<p>${shown}</p>`, shown, '<svg>own</svg>'])
  })

  it('stay in place where one page alone has them', () => {
    expect(drawnOnce([drawing])).toEqual({ pages: [drawing], drawings: '' })
  })

  it('are given for a phone where they are laid out for two widths', () => {
    const both = `<div class="on-wide"><svg>wide</svg></div><div class="on-narrow">${drawing}</div>`
    expect(onePicture(both)).toBe(`<div class="drawn">${drawing}</div>`)
  })
})
