import fc from 'fast-check'
import { expect, it } from 'vitest'
import { asWritten, harmless } from '../../src/read/harmless-cell.ts'

it('keeps a spreadsheet from taking words for a formula, and leaves numbers alone', () => {
  for (const text of ['=1+1', '+zq()', '-zq()', '@zq', '\tzq', '- raked the gate', "'=zq()"])
    expect(harmless(text)).toBe(`'${text}`)
  for (const text of ['-12', '-0.5', '7', 'raked the gate', "'tis dry", ''])
    expect(harmless(text)).toBe(text)
})

it('comes back as it was written', () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom("'", '=', '-', '5', 'a', ' ') }), (text) => {
      expect(asWritten(harmless(text))).toBe(text)
    }),
  )
})
