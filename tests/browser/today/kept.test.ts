import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type AllPutIn,
  fromFragment,
  fromText,
  toFragment,
  toText,
} from '../../../src/browser/today/kept.ts'

/** Whole minutes: a link says no more of the time. */
const putIn: fc.Arbitrary<AllPutIn> = fc
  .tuple(
    fc.integer({ min: 1, max: 50_000_000 }),
    fc.dictionary(
      fc.stringMatching(/^[a-z]{2,9}\.[a-z-]{1,12}$/),
      fc.string({ minLength: 1, maxLength: 39, unit: 'binary' }),
    ),
  )
  .map(
    ([minute, texts]) =>
      new Map(Object.entries(texts).map(([name, text]) => [name, { text, at: minute * 60_000 }])),
  )

describe('what was put in', () => {
  it('comes back from the store and from a link as it went in', () => {
    fc.assert(
      fc.property(putIn, (all) => {
        expect(fromText(toText(all))).toEqual(all)
        expect(fromFragment(toFragment(all))).toEqual(all)
      }),
    )
  })

  it('is a readable link', () => {
    const all = new Map([['cushion.moisture.found', { text: '4 %', at: 1_785_000_000_000 }]])
    expect(toFragment(all)).toBe('#today=29750000&cushion.moisture.found=4+%25')
  })

  it.each(['', 'no JSON', '{"a": 1}', '[[1, 2, 3]]', '[["a.b", "1"]]'])(
    'is nothing in a store that holds something else: %s',
    (text) => {
      expect(fromText(text).size).toBe(0)
    },
  )

  it.each(['', '#text', '#today', '#today=x&a.b=1', '#seal~roll'])(
    'is nothing in a fragment that is none of a link: %s',
    (fragment) => {
      expect(fromFragment(fragment).size).toBe(0)
    },
  )
})
