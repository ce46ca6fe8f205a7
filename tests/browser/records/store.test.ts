import { describe, expect, it } from 'vitest'
import { recordStore, type Shelf } from '../../../src/browser/records/store.ts'

/** A browser's store, with room for so many characters. */
function shelfOf(room = Number.POSITIVE_INFINITY) {
  const held = new Map<string, string>()
  const shelf: Shelf = {
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, text) => {
      const others = [...held].reduce((sum, [k, t]) => sum + (k === key ? 0 : t.length), 0)
      if (others + text.length > room) throw new Error('full')
      held.set(key, text)
    },
    removeItem: (key) => void held.delete(key),
  }
  return { shelf, held }
}

const first = { '2027-06-01': { rain: '0.1 in' } }
const second = { '2027-06-01': { rain: '0.2 in' } }

describe('records on a phone', () => {
  it('are there when the page is opened again, each facility by itself', () => {
    const { shelf } = shelfOf()
    expect(recordStore('one', shelf).change(first)).toBe(true)
    expect(recordStore('one', shelf).now()).toEqual(first)
    expect(recordStore('other', shelf).now()).toEqual({})
  })

  it('go back one step, after a wipe and a new start of the page too', () => {
    const { shelf } = shelfOf()
    const store = recordStore('one', shelf)
    expect(store.canGoBack()).toBe(false)
    store.change(first)
    store.change(second)
    store.change({})
    const later = recordStore('one', shelf)
    expect(later.back()).toBe(true)
    expect(later.now()).toEqual(second)
    expect(later.back()).toBe(false)
  })

  it('last as long as the page where the browser keeps nothing, and say so', () => {
    for (const shelf of [undefined, shelfOf(0).shelf]) {
      const store = recordStore('one', shelf)
      expect(store.keeps).toBe(false)
      expect(store.change(first)).toBe(false)
      store.change(second)
      expect(store.back()).toBe(true)
      expect(store.now()).toEqual(first)
    }
  })

  it('say that they are not kept when there is no room left', () => {
    const store = recordStore('one', shelfOf(40).shelf)
    expect(store.change(first)).toBe(true)
    expect(store.change({ '2027-06-01': { seen: 'a long story'.repeat(9) } })).toBe(false)
    expect(store.now()['2027-06-01']?.['seen']).toContain('story')
  })

  it('are not broken by what somebody else wrote there', () => {
    const { shelf } = shelfOf()
    for (const text of ['{', '7', '{"2027-06-01":3,"x":{"rain":"1 in"}}']) {
      shelf.setItem('ovalkeep.records.one', text)
      expect(recordStore('one', shelf).now()).toEqual({})
    }
  })
})
