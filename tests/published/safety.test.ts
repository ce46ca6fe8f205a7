import { afterAll, describe, expect, it } from 'vitest'
import file from '../../shared/published/safety.cases.json' with { type: 'json' }
import { type Case, compare, inputsOf, printCounts, type Runner, titleOf } from './earth/case.ts'
import { heatAtWork } from './safety/heat.ts'
import { letters } from './safety/letters.ts'
import { loads } from './safety/loads.ts'
import { noiseAndDust } from './safety/noise-and-dust.ts'
import { stormsAndLines } from './safety/storms-and-lines.ts'

const cases = file as unknown as readonly (Case & { readonly fn: string })[]
const runners: Readonly<Record<string, Runner>> = {
  ...heatAtWork,
  ...stormsAndLines,
  ...noiseAndDust,
  ...loads,
  ...letters,
}

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
