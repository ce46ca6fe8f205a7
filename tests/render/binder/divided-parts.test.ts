import { describe, expect, it } from 'vitest'
import { dividedParts } from '../../../src/render/binder/divided-parts.ts'
import { renderBinder } from '../../../src/render/binder/render-binder.ts'
import { assetsFor, demoManual } from '../../support/demo.ts'

describe('a binder with tab stock', () => {
  it('has no divider leaves of its own, and begins every part on a right-hand page', async () => {
    const { manual, words } = await demoManual('ostmere')
    const assets = await assetsFor(words, 'inline')
    const { parts } = renderBinder(manual, assets)
    expect(parts.every((p) => p.beginsRight)).toBe(true)
    const hasDivider = (p: (typeof parts)[number]): boolean => p.css.right.includes(':first{')
    expect(parts.some(hasDivider)).toBe(false)
    const leaves = renderBinder(
      {
        ...manual,
        facility: { ...manual.facility, binder: { ...manual.facility.binder, dividers: 'leaves' } },
      },
      assets,
    )
    expect(
      leaves.parts.filter(hasDivider).map((p) => p.pages.number),
      'whose first page is its divider',
    ).toEqual(
      // A section has an opener, whatever dividers there are.
      dividedParts(manual, words)
        .slice(manual.sections.length)
        .map((p) => p.number),
    )
  })
})
