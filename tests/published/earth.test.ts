import { afterAll, describe, expect, it } from 'vitest'
import file from '../../shared/published/earth.cases.json' with { type: 'json' }
import { type Case, compare, inputsOf, printCounts, type Runner, titleOf } from './earth/case.ts'
import { compaction } from './earth/compaction.ts'
import { costs } from './earth/costs.ts'
import { curvesAndPower } from './earth/curves-and-power.ts'
import { production } from './earth/production.ts'
import { soils } from './earth/soils.ts'
import { volumes } from './earth/volumes.ts'

const cases = file as readonly Case[]
const runners: Readonly<Record<string, Runner>> = {
  ...production,
  ...volumes,
  ...compaction,
  ...soils,
  ...curvesAndPower,
  ...costs,
}
const nameOf = (c: Case): string => c.formula.split(':')[0] ?? ''

describe.each([...new Set(cases.map((c) => c.topic))])('published checks, %s', (topic) => {
  it.each(cases.filter((c) => c.topic === topic).map((c) => [titleOf(c), c] as const))(
    '%s',
    (_title, c) => {
      const run = runners[nameOf(c)]
      if (!run) throw new Error(`nothing here works out ${nameOf(c)}`)
      compare(c, run(inputsOf(c)))
    },
  )
})

it('works out no formula that no case asks for', () => {
  const asked = new Set(cases.map(nameOf))
  expect(Object.keys(runners).filter((name) => !asked.has(name))).toEqual([])
})

afterAll(() => printCounts(cases))
