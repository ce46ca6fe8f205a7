import { describe, expect, it } from 'vitest'
import { factCalled, factMeant } from '../../src/model/fact-called.ts'
import { factPaths, factSpec } from '../../src/model/fact-spec.ts'

describe('a fact', () => {
  it('is called by its path or by the label that the manual prints', () => {
    expect(factCalled('oval.lap')).toBe('oval.lap')
    expect(factCalled('One lap at the measuring line')).toBe('oval.lap')
    expect(factCalled('turn radius at the rail ')).toBe('oval.radius')
    const called = factPaths.filter((path) => factCalled(factSpec(path)?.label ?? '') === path)
    expect(called.length).toBeGreaterThan(150)
  })

  it('of which several have the label is asked for by path', () => {
    expect(factCalled('working width')).toBeUndefined()
    expect(factMeant('working width')).toContain('"gear.grade.width" (working width) or ')
  })

  it('that there is not is met with those that have its words', () => {
    expect(factMeant('cushion.depth.fond')).toBe(
      'did you mean "cushion.depth.found" (depth of the cushion found)?',
    )
    expect(factMeant('rail lip')).toBe(
      'did you mean "rail-ridge.height" (height of the ridge at the rail)?',
    )
    expect(factMeant('cushion depth')).toContain('"cushion.depth.found"')
    expect(factMeant('zebra stripes')).toContain('write the path')
  })
})
