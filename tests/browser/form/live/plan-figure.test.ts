import { describe, expect, it } from 'vitest'
import { ovalLengths } from '../../../../src/browser/form/live/numbers.ts'
import { planKey, planSvg } from '../../../../src/browser/form/live/plan-figure.ts'
import { demoFiles } from '../../../answers/support/work.ts'
import { demos } from '../../../support/demo.ts'
import { shownOf } from './support.ts'

describe('the oval as it is described', () => {
  it.each(demos)('of %s is drawn, with its lengths for those who do not see it', (demo) => {
    const shown = shownOf(demoFiles(demo))
    const svg = planSvg(shown, ovalLengths(shown))
    expect(svg).toMatch(/^<svg [^>]*role="img"/)
    expect(svg).toContain(`aria-label="The oval`)
    expect(svg).toContain(ovalLengths(shown)[0]?.number)
    // A page that forbids styles in it shows the same.
    expect(svg).not.toContain('style=')
  })

  it('is drawn anew where it changes, and left alone where something else does', () => {
    const files = demoFiles('larkmoor')
    const changed = (from: string, to: string) =>
      new Map([
        ...files,
        ['facility.yaml', (files.get('facility.yaml') ?? '').replace(from, to)] as const,
      ])
    const key = planKey(shownOf(files))
    expect(planKey(shownOf(changed('straight: 600 ft', 'straight: 610 ft')))).not.toBe(key)
    expect(planKey(shownOf(changed('Gate A (paddock)', 'Gate X')))).not.toBe(key)
    expect(planKey(shownOf(changed('"911"', '"912"')))).toBe(key)
  })
})
