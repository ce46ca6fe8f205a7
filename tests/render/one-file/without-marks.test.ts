import { describe, expect, it } from 'vitest'
import { withoutMarks } from '../../../src/render/one-file/without-marks.ts'
import { formulaTemplates } from '../../../src/render/text/formula.ts'

describe('a page without the marks of what follows the numbers of a day', () => {
  it('has no names by which a script finds them', () => {
    expect(
      withoutMarks(
        '<table data-reckoner="a b"><td class="value" data-input="w" data-fact="harrow.width">7 ft</td><b data-q="harrow.time">1 h</b></table>',
      ),
    ).toBe('<table><td class="value">7 ft</td><b>1 h</b></table>')
  })

  it('has no formulas for other numbers', () => {
    const places = formulaTemplates('t = \\frac{@w}{@v}', { v: 'v' })
    expect(withoutMarks(`<p>one</p>${places}<p>two</p>`)).toBe('<p>one</p><p>two</p>')
  })

  it('keeps what else has a name, and what is written', () => {
    const text =
      '<div data-fact="harrow.width">data-q=&quot;a&quot;</div><template><fieldset></fieldset></template>'
    expect(withoutMarks(text)).toBe(text)
  })
})
