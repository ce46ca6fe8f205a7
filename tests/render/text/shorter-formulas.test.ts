import { describe, expect, it } from 'vitest'
import { formulaHtml } from '../../../src/render/text/formula.ts'
import { shorterFormulas } from '../../../src/render/text/shorter-formulas.ts'

describe('formulas on pages that a phone keeps', () => {
  it('lose what only wraps them, and nothing else', () => {
    expect(
      shorterFormulas(
        '<math><mstyle scriptlevel="0" displaystyle="true"><mrow></mrow><mi>A</mi><mstyle><mn>2</mn></mstyle><mspace width="1em"></mspace></mstyle></math>',
      ),
    ).toBe(
      '<math displaystyle="true"><mi>A</mi><mstyle><mn>2</mn></mstyle><mspace width="1em"/></math>',
    )
  })

  it('are those that the maker of formulas makes', () => {
    const made = String(formulaHtml('A = 2 \\cdot S', 'area'))
    expect(made).toContain('<mstyle scriptlevel="0" displaystyle="true">')
    expect(shorterFormulas(made)).not.toContain('<mstyle')
  })
})
