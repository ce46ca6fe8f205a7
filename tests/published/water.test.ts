import { afterAll, describe, expect, it } from 'vitest'
import file from '../../shared/published/water.cases.json' with { type: 'json' }
import { type Case, compare, inputsOf, printCounts, type Runner, titleOf } from './earth/case.ts'
import { airAndSun } from './water/air-and-sun.ts'
import { soilAndRain } from './water/soil-and-rain.ts'

type Named = Case & { readonly fn: string }

const cases = file as unknown as readonly Named[]
const runners: Readonly<Record<string, Runner>> = { ...airAndSun, ...soilAndRain }

describe.each([...new Set(cases.map((c) => c.topic))])('published checks, %s', (topic) => {
  it.each(cases.filter((c) => c.topic === topic).map((c) => [titleOf(c), c] as const))(
    '%s',
    (_title, c) => {
      const run = runners[c.fn]
      if (!run) throw new Error(`nothing here works out ${c.fn}`)
      compare(c, run(inputsOf(c)))
    },
  )
})

it('works out no formula that no case asks for', () => {
  const asked = new Set(cases.map((c) => c.fn))
  expect(Object.keys(runners).filter((name) => !asked.has(name))).toEqual([])
})

afterAll(() => printCounts(cases))
