import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lineOf, placeAt } from '../../src/read/source-file.ts'

const texts = fc.array(fc.constantFrom('a', 'é', '\n', '\r\n', '')).map((parts) => parts.join(''))

describe('a place in a file', () => {
  it('has as many lines before it as line ends, and the rest of its line before it', () =>
    fc.assert(
      fc.property(texts, fc.nat(), (text, n) => {
        const at = n % (text.length + 1)
        const before = text.slice(0, at).split('\n')
        expect(placeAt({ path: 'a', text }, at, 1)).toMatchObject({
          line: before.length,
          column: (before.at(-1)?.length ?? 0) + 1,
        })
      }),
    ))

  it('has the line that a text parted at its line ends has', () =>
    fc.assert(
      fc.property(texts, fc.nat(8), (text, n) => {
        expect(lineOf({ path: 'a', text }, n)).toBe(text.split('\n')[n - 1] ?? '')
      }),
    ))
})
