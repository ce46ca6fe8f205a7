import { describe, expect, it } from 'vitest'
import { renderBinder } from '../../../src/render/binder/render-binder.ts'
import { assetsFor } from '../../support/demo.ts'
import { smallManual } from '../../support/small.ts'

const { manual, words } = await smallManual()
const assets = await assetsFor(words, 'inline')
const [color, black] = [renderBinder(manual, assets), renderBinder(manual, assets, 'black')]

describe('a binder in black', () => {
  it('has the same pages in other ink', () => {
    expect(black.parts.map((p) => p.body)).toEqual(color.parts.map((p) => p.body))
    for (const [i, { css }] of black.parts.entries())
      expect(css.right.startsWith(color.parts[i]?.css.right.slice(0, 200) ?? '')).toBe(true)
  })

  it('has black tabs, and its style applies to all of the document', () => {
    const [, { css } = { css: { right: '' } }] = black.parts
    expect(css.right).toMatch(/@right-top\{content:"1";background:#000/)
    expect(css.right).toContain(':root .caution-danger')
    expect(css.right).not.toContain('.black')
  })
})
