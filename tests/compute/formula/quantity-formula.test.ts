import { describe, expect, it } from 'vitest'
import { formulaTex } from '../../../src/compute/formula/formula-tex.ts'
import { quantityFormula } from '../../../src/compute/formula/quantity-formula.ts'

describe('quantityFormula', () => {
  it.each([
    ['2 1/4 in', '2\\tfrac{1}{4}\\,\\text{in}'],
    ['3/4 in', '\\tfrac{3}{4}\\,\\text{in}'],
    ['−3/4 in', '-\\tfrac{3}{4}\\,\\text{in}'],
    ['−2 1/4 in', '-2\\tfrac{1}{4}\\,\\text{in}'],
    ['2,640 ft', '2{,}640\\,\\text{ft}'],
    ['25 %', '25\\,\\text{\\%}'],
    ['40.62°', '40.62\\,\\text{°}'],
    ['1 h 25 min', '1\\,\\text{h 25 min}'],
    ['−3 °C', '-3\\,\\text{°C}'],
    ['12', '12'],
    ['$19.50/ton', '\\text{\\$}19.50\\,\\text{/ton}'],
    ['13:00', '\\text{13:00}'],
    ['CA$90', '\\text{CA\\$}90'],
    ['€0.90', '\\text{€}0.90'],
  ])('sets %s', (text, tex) => {
    expect(formulaTex(quantityFormula(text))).toBe(tex)
  })
})
