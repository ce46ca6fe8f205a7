import { afterAll, describe, expect, it } from 'vitest'
import file from '../../shared/published/oval.cases.json' with { type: 'json' }
import { transitionSpiral } from '../../src/compute/oval/transition-spiral.ts'
import { materials } from '../../src/model/oval-choices.ts'
import { toUnit } from '../../src/model/quantity/format-quantity.ts'
import { type Case, compare, inputsOf, printCounts, titleOf } from './earth/case.ts'
import { geometry, trackWork, usual } from './earth/oval.ts'
import { spirals } from './earth/spirals.ts'

const cases = file as readonly Case[]
const runners = [...geometry, ...spirals, ...trackWork]
/** Checks of another kind than "these inputs give that answer"; they stand below. */
const apart = new Set(['A-CLO-12', 'B-DEPTH-01', 'B-MOIST-01'])
const caseOf = (id: string): Case => {
  const found = cases.find((c) => c.id === id)
  if (!found) throw new Error(`no case ${id}`)
  return found
}

const subjects = [
  ['oval, banking, pylons', cases.filter((c) => /^A-(?!CLO)/.test(c.id))],
  ['transition spirals', cases.filter((c) => c.id.startsWith('A-CLO'))],
  ['track work', cases.filter((c) => c.id.startsWith('B-'))],
] as const

describe.each(subjects)('published checks, %s', (_subject, all) => {
  it.each(all.filter((c) => !apart.has(c.id)).map((c) => [titleOf(c), c] as const))(
    '%s',
    (_title, c) => {
      const run = runners.find(([id]) => id.test(c.id))?.[1]
      if (!run) throw new Error(`nothing here works out ${c.id}`)
      compare(c, run(inputsOf(c)))
    },
  )
})

describe('published checks, of another kind', () => {
  it('A-CLO-12 arithmetic check: the short forms of the spiral lie within 1 % of the exact ones', () => {
    const { R, Ls } = caseOf('A-CLO-12').inputs as { R: number; Ls: number }
    const exact = transitionSpiral(Ls, R)
    const short = caseOf('A-CLO-12').expected as { p: number; Y: number; X: number }
    for (const [given, found] of [
      [short.p, exact.shift],
      [short.Y, exact.y],
      [short.X, exact.x],
    ] as const) {
      expect(Math.abs(given / found - 1)).toBeLessThan(0.01)
    }
  })

  it(`B-DEPTH-01 ${caseOf('B-DEPTH-01').source}: footing for driving is what stands in on clay`, () => {
    expect(toUnit(usual('cushion.depth.target', 'clay'), 'in')).toBeCloseTo(
      (caseOf('B-DEPTH-01').expected as { driving_in: number }).driving_in,
      9,
    )
  })

  it(`B-MOIST-01 ${caseOf('B-MOIST-01').source}: moisture that stands in lies in the published range`, () => {
    const { min_pct, max_pct } = caseOf('B-MOIST-01').expected as {
      min_pct: number
      max_pct: number
    }
    for (const material of materials) {
      const percent = 100 * usual('cushion.moisture.target', material)
      expect(percent).toBeGreaterThanOrEqual(min_pct)
      expect(percent).toBeLessThanOrEqual(max_pct)
    }
  })
})

afterAll(() => printCounts(subjects.flatMap(([topic, all]) => all.map((c) => ({ ...c, topic })))))
