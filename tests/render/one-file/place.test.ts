import { describe, expect, it } from 'vitest'
import { pageId, placeId, placeOf } from '../../../src/render/one-file/place.ts'

const pages = new Set([
  'index.html',
  'safety.html',
  'procedures/seal.html',
  'procedures/water.html',
])

describe('a link in the manual in one file', () => {
  it('leads to the page, or to the place on it, that it led to', () => {
    const of = (href: string, page = 'procedures/seal.html') => placeOf(href, page, pages)
    expect(of('../safety.html')).toBe('#safety')
    expect(of('water.html#roll')).toBe('#procedures.water~roll')
    expect(of('../procedures/water.html#roll')).toBe('#procedures.water~roll')
    expect(of('#roll')).toBe('#procedures.seal~roll')
    expect(of('safety.html', 'index.html')).toBe('#safety')
    expect(of('tel:911')).toBe('tel:911')
    expect(of('geo:1,2')).toBe('geo:1,2')
  })

  it('leads to the head of its own page, since no other head is shown', () => {
    for (const href of ['#top', '#text', 'seal.html'])
      expect(placeOf(href, 'procedures/seal.html', pages)).toBe('#procedures.seal')
  })

  it('is refused where it would lead nowhere', () => {
    expect(() => placeOf('sheets/seal.pdf', 'index.html', pages)).toThrow(
      'leads to sheets/seal.pdf',
    )
  })

  it('tells places of two pages apart', () => {
    expect(placeId('procedures/seal.html', 'roll')).not.toBe(
      placeId('procedures/water.html', 'roll'),
    )
    expect(pageId('procedures/seal.html')).toBe('procedures.seal')
  })
})
