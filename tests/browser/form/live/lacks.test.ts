import { describe, expect, it } from 'vitest'
import { lacksOf } from '../../../../src/browser/form/live/lacks.ts'
import { demoFiles } from '../../../answers/support/work.ts'
import { demos } from '../../../support/demo.ts'
import { shownOf } from './support.ts'

describe('what a track lacks', () => {
  it.each(demos)('of %s is every finding, each once, in words without marks or names', (demo) => {
    const shown = shownOf(demoFiles(demo))
    const { findings, blanks } = lacksOf(shown)
    const all = [...findings, ...blanks]
    expect(all.map((f) => f.id).sort()).toEqual(shown.manual.findings.map((f) => f.id).sort())
    for (const { title, text, what } of all)
      expect(`${title} ${text} ${what}`).not.toMatch(/[{}*_`]|\]\(|–\s?–/)
  })

  it('has blanks of the emergency page apart, called as people call them', () => {
    const { findings, blanks } = lacksOf(shownOf(new Map()))
    expect(blanks.map(({ label }) => label)).toContain('Ambulance')
    expect(blanks.find((b) => b.id === 'no-way-in')?.entry).toBe('emergency.way')
    expect(findings.map((f) => f.id)).toContain('no-harrow')
    expect(findings.map((f) => f.severity)).toEqual(
      [...findings.map((f) => f.severity)].sort(
        (a, b) => ['serious', 'plan', 'note'].indexOf(a) - ['serious', 'plan', 'note'].indexOf(b),
      ),
    )
  })
})
