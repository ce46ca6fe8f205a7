import { describe, expect, it } from 'vitest'
import { usedCharacters } from '../../../src/cli/load/used-characters.ts'

describe('the characters that a site shows', () => {
  it('are told apart by the fonts that have them', () => {
    const used = usedCharacters(['<p>½ in → ⅛ ł Δ</p>', '<math><mi>h</mi><mo>≥</mo></math>'])
    expect(used.signs).toBe('Δ⅛→')
    expect(used.letters).toBe('ł')
    expect(used.latin).toContain('½')
    expect(used.latin).not.toContain('≥')
    expect(used.formulas).toContain('≥')
    expect(used.formulas).not.toContain('→')
  })

  // The Unicode Standard, chapter 22.2: Mathematical Alphanumeric Symbols, with the gap at h.
  it('have in formulas the italic of every letter, which a browser puts for one that stands alone', () => {
    const { formulas } = usedCharacters(['<math><mi>ρ</mi></math>'])
    for (const letter of ['𝐴', '𝑍', '𝑎', '𝑧', 'ℎ', '𝜌']) expect(formulas).toContain(letter)
  })

  it('have all that can be typed, and nothing for formulas where there are none', () => {
    const used = usedCharacters(['<p>a</p>'])
    for (const c of 'AZaz09%&') expect(used.latin).toContain(c)
    expect(used.formulas).toBe('')
  })
})
