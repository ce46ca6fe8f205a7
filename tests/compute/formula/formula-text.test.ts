import { describe, expect, it } from 'vitest'
import { formulaText } from '../../../src/compute/formula/formula-text.ts'

describe('formulaText', () => {
  it.each([
    ['\\rho_d', 'ρ_d'],
    ['T_{max}', 'T_max'],
    ["V_+'", 'V_+′'],
    ['\\bar d', 'd̄'],
    ['\\ell', 'l'],
    ['2\\tfrac{1}{4}\\,\\text{in}', '2 1/4 in'],
    ['\\text{\\$}19.50\\,\\text{/ton}', '$19.50 /ton'],
    ['2{,}640\\,\\text{ft}', '2,640 ft'],
    ['\\tfrac12\\,a', '1/2 a'],
    ['\\frac{a}{b}', 'a/b'],
    ['\\frac{a + b}{2\\,c}', '(a + b)/(2 c)'],
    ['\\frac{a}{b}\\,c', '(a/b) c'],
    ['\\sqrt{\\frac{a}{b}}', '√(a/b)'],
    ['\\left\\lceil \\frac{a}{b} \\right\\rceil', 'round up (a/b)'],
    ['\\left\\lfloor a \\right\\rfloor', 'round down (a)'],
    ['(a - b)^2', '(a - b)²'],
    ['x^{0.6}', 'x^0.6'],
    ['2^{(a - b)/3}', '2^((a - b)/3)'],
    ['\\textstyle\\sum_k \\tfrac12 (F_k + F_{k+1})\\,L_k', 'Σ_k 1/2 (F_k + F_(k+1)) L_k'],
    ['[HI \\ge 91\\,°\\text{F}]', '[HI ≥ 91 °F]'],
    ['\\exp\\frac{a}{b}', 'exp(a/b)'],
    ['\\max(a,\\,b)', 'max(a, b)'],
    ['\\min_i d_i', 'min_i d_i'],
    ['|a - b| \\le \\delta', '|a - b| ≤ δ'],
    ['2 \\cdot a', '2 × a'],
    ['25\\,\\text{\\%}', '25 %'],
  ])('prints %s as %s', (tex, text) => {
    expect(formulaText(tex)).toBe(text)
  })

  it('says what it cannot read instead of letting it through', () => {
    expect(() => formulaText('\\mystery{a}')).toThrow('"\\mystery" is not known')
    expect(() => formulaText('\\frac{a}{b')).toThrow('ends too early')
  })
})
