import { describe, expect, it } from 'vitest'
import { quantityTex } from '../../src/compute/formula.ts'
import { demoManual, demos } from '../support/demo.ts'

describe('quantityTex', () => {
  it.each([
    ['2 1/4 in', '2\\tfrac{1}{4}\\,\\text{in}'],
    ['3/4 in', '\\tfrac{3}{4}\\,\\text{in}'],
    ['2,640 ft', '2{,}640\\,\\text{ft}'],
    ['25 %', '25\\,\\text{\\%}'],
    ['1 h 25 min', '1\\,\\text{h 25 min}'],
    ['−3 °C', '-3\\,\\text{°C}'],
    ['12', '12'],
    ['$19.50/ton', '\\text{\\$}19.50\\,\\text{/ton}'],
    ['13:00', '\\text{13:00}'],
    ['CA$90', '\\text{CA\\$}90'],
  ])('sets %s', (text, tex) => {
    expect(quantityTex(text)).toBe(tex)
  })
})

describe.each(demos)('formulas of %s', (id) => {
  it('leave no name unreplaced, and put a sign between any two numbers', async () => {
    const { manual } = await demoManual(id)
    for (const f of manual.worksheets.flatMap((w) => w.formulas)) {
      expect(`${f.tex}${f.numbers}`, f.figure).not.toMatch(/@[a-z]/)
      expect(
        f.numbers.replace(/\\text\{[^}]*\}|\\[td]?frac\{[^{}]*\}\{[^{}]*\}/g, ''),
        f.figure,
      ).not.toMatch(/\d\}\s*(?:\\,)?\s*\{\d/)
    }
  })
})
