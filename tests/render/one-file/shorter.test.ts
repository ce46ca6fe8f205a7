import { describe, expect, it } from 'vitest'
import {
  formulasByStyle,
  shorterDrawings,
  withoutEnds,
} from '../../../src/render/one-file/shorter.ts'

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

describe('tables and lists of the manual in one file', () => {
  it('leave out the ends that a reader of HTML puts in, and no others', () => {
    expect(
      withoutEnds(
        '<table><thead><tr><th>A</th><th>B</th></tr></thead><tbody><tr><td>1</td> <td>2</td></tr>\n<tr><th>3</th></tr></tbody></table>',
      ),
    ).toBe('<table><thead><tr><th>A<th>B</thead><tbody><tr><td>1 <td>2\n<tr><th>3</tbody></table>')
    expect(withoutEnds('<ul><li>a</li><li>b <ol><li>c</li></ol></li></ul><p>d</p>')).toBe(
      '<ul><li>a<li>b <ol><li>c</ol></ul><p>d</p>',
    )
    expect(withoutEnds('<thead><tr><td>1</td></tr></thead>')).toBe('<thead><tr><td>1</thead>')
  })
})

describe('formulas of the manual in one file', () => {
  it('leave out what the style says of all, and what nobody sees', () => {
    expect(
      formulasByStyle(
        '<math displaystyle="true"><mo form="prefix" stretchy="false" fence="true">(</mo><mi>a</mi><mo separator="true">,</mo></math>',
      ),
    ).toBe('<math><mo form="prefix" stretchy="false">(</mo><mi>a</mi><mo>,</mo></math>')
    const smaller = '<math><mstyle displaystyle="false"><mi>a</mi></mstyle></math>'
    expect(formulasByStyle(smaller)).toBe(smaller)
  })
})
