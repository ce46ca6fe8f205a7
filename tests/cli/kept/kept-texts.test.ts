import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type KeptResults, useResults } from '../../../src/cli/kept/kept-results.ts'
import { keepTexts, recallTexts } from '../../../src/cli/kept/kept-texts.ts'
import { rememberOf } from '../../../src/model/remembered.ts'

/** What lies in the cache, and how often it was written. */
let kept: { value: { readonly texts: ReadonlyMap<string, string> } } | undefined
let writes: number
const results: KeptResults = {
  find: () => kept,
  keep: (_kind, _parts, value) => {
    kept = { value: value as NonNullable<typeof kept>['value'] }
    writes++
  },
}

beforeEach(() => {
  kept = undefined
  writes = 0
  useResults(results)
})
afterEach(() => useResults(undefined))

const shout = rememberOf('texts', (text) => text.toUpperCase())

describe('texts that are kept for the next command', () => {
  it('are written where there is something new, and else left alone', () => {
    shout('one of the first fair')
    keepTexts()
    expect(writes).toBe(1)
    recallTexts(results)
    shout('one of the first fair')
    shout('one of the second')
    keepTexts()
    recallTexts(results)
    shout('one of the second')
    keepTexts()
    expect(writes).toBe(2)
    expect(kept?.value.texts.get('one of the first fair')).toBe('ONE OF THE FIRST FAIR')
    expect(kept?.value.texts.get('one of the second')).toBe('ONE OF THE SECOND')
  })
})
