import { afterAll, describe, expect, it } from 'vitest'
import file from '../../shared/published/safety.cases.json' with { type: 'json' }
import { type Case, compare, inputsOf, printCounts, titleOf } from './earth/case.ts'
import { safetyAtWork } from './safety/work.ts'

const cases = file as unknown as readonly (Case & { readonly fn: string })[]

describe('published checks, safety at work', () => {
  it.each(cases.map((c) => [titleOf(c), c] as const))('%s', (_title, c) => {
    const run = safetyAtWork[c.fn]
    if (!run) throw new Error(`nothing here works out ${c.fn}`)
    compare(c, run(inputsOf(c)))
  })

  it('works out no formula that no case asks for', () => {
    const asked = new Set(cases.map((c) => c.fn))
    expect(Object.keys(safetyAtWork).filter((name) => !asked.has(name))).toEqual([])
  })
})

afterAll(() => printCounts(cases))
