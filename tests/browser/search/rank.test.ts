import { describe, expect, it } from 'vitest'
import { bestLine, marked } from '../../../src/browser/search/best-line.ts'
import { rank } from '../../../src/browser/search/rank.ts'
import { unitsOf } from '../../../src/browser/search/units.ts'
import type { SearchIndex } from '../../../src/model/search.ts'

/** Words: drag, harrow, loose, horse, track. */
const index: SearchIndex = {
  kinds: ['Procedure'],
  entries: [
    ['a.html', 0, 'Harrow', 'Loosens the cushion.', 'Drag it in the evening.'],
    ['b.html', 0, 'Loose horse'],
    ['c.html', 0, 'Drag', 'A horse is needed.'],
  ],
  words: ['drag', 'harrow', 'horse', 'loose'],
  found: [
    [0, 10, 2, 60],
    [0, 60, 1, 1],
    [1, 60, 1, 20],
    [1, 60],
  ],
  same: [
    [['harrow'], ['drag']],
    [['loose', 'horse'], ['runaway']],
  ],
  silent: ['the'],
}

const found = (query: string): readonly string[] =>
  rank(query, index).map(({ entry }) => index.entries[entry]?.[0] ?? '')

describe('the search', () => {
  it('finds what has the word before what has another for the same', () => {
    expect(found('drag').slice(0, 2)).toEqual(['c.html', 'a.html'])
    expect(found('harrow')[0]).toBe('a.html')
  })

  it('finds a phrase by another for the same', () => expect(found('runaway')[0]).toBe('b.html'))

  it('puts what has all words before what has some', () =>
    expect(found('loose horse')[0]).toBe('b.html'))

  it('finds by a word for the same that is misspelt or not yet whole', () => {
    expect(found('runawey')[0]).toBe('b.html')
    expect(found('runaw')[0]).toBe('b.html')
  })

  it('finds with a letter wrong, and nothing for what is not there', () => {
    expect(found('harow')[0]).toBe('a.html')
    expect(found('xylophone')).toEqual([])
    expect(found('')).toEqual([])
    expect(found('the')).toEqual([])
  })

  it('parts a query in phrases and words, and leaves out what tells nothing', () => {
    expect(unitsOf('the loose horse drag', index).map((u) => u[0]?.words)).toEqual([
      ['loose', 'horse'],
      ['drag'],
    ])
  })

  it('shows the line that led to a result, with the words marked', () => {
    const [entry] = index.entries
    if (!entry) throw new Error('no entry')
    expect(bestLine(entry, ['drag'])).toBe('Drag it in the evening.')
    expect(bestLine(entry, [])).toBe('Loosens the cushion.')
    expect(marked('Drag it, drag W-24', ['drag', 'w-24'])).toEqual([
      '',
      'Drag',
      ' it, ',
      'drag',
      ' ',
      'W-24',
      '',
    ])
    expect(marked('none', [])).toEqual(['none'])
  })
})
