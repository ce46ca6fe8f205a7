import { describe, expect, it } from 'vitest'
import { createTemplates } from '../../../src/render/text/templates.ts'

describe('templates', () => {
  const render = (text: string, data: object): string =>
    createTemplates({ t: text }).render('t', data)

  it('escapes whatever is not made here', () => {
    expect(render('{{x}}', { x: '<b>' })).toBe('&lt;b&gt;')
  })

  it('fail on a missing value', () => {
    expect(() => render('{{x.y}}', { x: {} })).toThrow()
    expect(() => render('{{x}}', {})).toThrow()
  })

  it('cannot reach prototypes or unknown helpers', () => {
    expect(() => render('{{constructor.name}}', {})).toThrow()
    expect(() => render('{{x.__proto__.polluted}}', { x: {} })).toThrow()
    expect(render('{{lookup x "constructor"}}', { x: {} })).toBe('')
    expect(() => render('{{exec "x"}}', {})).toThrow()
  })
})
