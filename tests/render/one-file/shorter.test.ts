import { describe, expect, it } from 'vitest'
import { shorterDrawings, shorterFormulas } from '../../../src/render/one-file/shorter.ts'
import { formulaHtml } from '../../../src/render/text/formula.ts'

describe('formulas of the manual in one file', () => {
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

describe('drawings of the manual in one file', () => {
  const line = '<path d="m1 1" fill="none" stroke="var(--ink)" stroke-width="1.2"/>'

  it('say in a class what many of their lines say', () => {
    const { text, css } = shorterDrawings(`<svg>${line.repeat(9)}</svg>`)
    expect(text).toBe(`<svg>${'<path d="m1 1" class="s0"/>'.repeat(9)}</svg>`)
    expect(css).toBe('.s0{fill:none;stroke:var(--ink);stroke-width:1.2}')
  })

  it('keep what few say, and what has a class of its own', () => {
    const own = line.replace('<path', '<path class="lap"').repeat(20)
    expect(shorterDrawings(line + own)).toEqual({ text: line + own, css: '' })
  })
})
