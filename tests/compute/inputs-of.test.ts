import { describe, expect, it } from 'vitest'
import type { Calculation, OutputSpec, Refusal } from '../../src/compute/calculation.ts'
import type { Engine } from '../../src/compute/engine/engine.ts'
import { inputsOf } from '../../src/compute/inputs-of.ts'
import type { Use } from '../../src/compute/uses/use.ts'
import { useTable } from '../../src/compute/uses/use-table.ts'
import { demos, loadDemo } from '../support/demo.ts'

type Numbers = Readonly<Record<string, number>>

/** Steps large and small, so that a limit, a whole count and a smooth formula all show. */
const factors = [0.2, 0.5, 0.8, 0.97, 1.03, 1.25, 2, 5]

function inputsGiven(use: Use, engine: Engine): Numbers | undefined {
  const given = engine.worksheet(use.id)?.inputs ?? []
  const all = Object.keys(use.calculation.inputs).length === given.length
  return all ? Object.fromEntries(given.map((i) => [i.name, i.si])) : undefined
}

/** The same with one input moved, wherever that stays inside its range. */
function moved(calculation: Calculation, inputs: Numbers, name: string): readonly Numbers[] {
  const [low, high] = calculation.inputs[name]?.range ?? [0, 0]
  const before = inputs[name] ?? 0
  const steps = before === 0 ? [low, Math.min(high, 1)] : factors.map((f) => before * f)
  return steps.filter((x) => x >= low && x <= high).map((x) => ({ ...inputs, [name]: x }))
}

/** A refusal says no number, so nothing rests on it. */
const apart = (a: number | Refusal | undefined, b: number | Refusal | undefined): boolean =>
  typeof a === 'number' && typeof b === 'number' && a !== b

/** Pairs "output < input" in which the output moved with the input. */
function movements(calculation: Calculation, inputs: Numbers): ReadonlySet<string> {
  const found = new Set<string>()
  const look = (base: Numbers): void => {
    const before = calculation.compute(base)
    for (const name of Object.keys(calculation.inputs)) {
      for (const other of moved(calculation, base, name)) {
        const after = calculation.compute(other)
        for (const output of Object.keys(calculation.outputs))
          if (apart(before[output], after[output])) found.add(`${output} < ${name}`)
      }
    }
  }
  look(inputs)
  return found
}

const sample = (tex: string, restsOn?: OutputSpec['restsOn']): Calculation => ({
  id: 'sample',
  sources: [],
  inputs: {
    a: { symbol: 'a', kind: 'distance', range: [0, 9] },
    b: { symbol: 'b', kind: 'distance', range: [0, 9] },
  },
  outputs: {
    'first-part': { symbol: 'p', kind: 'distance', tex: '2\\,@a' },
    whole: { symbol: 'w', kind: 'distance', tex, ...(restsOn && { restsOn }) },
  },
  compute: () => ({}),
})

const whole = (tex: string, restsOn?: OutputSpec['restsOn']): readonly string[] =>
  [...inputsOf(sample(tex, restsOn), 'whole')].sort()

describe('the inputs that an output rests on', () => {
  it('are those that its formula names, also through outputs, and words are none', () => {
    expect(whole('@first-part + \\text{@word}')).toEqual(['a'])
    expect(whole('@first-part + @b')).toEqual(['a', 'b'])
  })

  it('are those declared, where the formula does not name them', () => {
    expect(whole('x', ['first-part'])).toEqual(['a'])
    expect(whole('x', 'all')).toEqual(['a', 'b'])
  })

  it('are asked for by a name that the calculation has', () => {
    expect(() => inputsOf(sample('@a'), 'other')).toThrow(/sample has no output other/)
  })

  it('are declared by names that there are', () => {
    const calculations: readonly Calculation[] = Object.values(useTable).flat()
    for (const { id, inputs, outputs } of calculations) {
      for (const { restsOn } of Object.values(outputs)) {
        const names = restsOn === 'all' ? [] : (restsOn ?? [])
        for (const name of names) expect({ ...inputs, ...outputs }, id).toHaveProperty([name])
      }
    }
  })

  it.each(demos)('are all that move it in %s', async (id) => {
    const { computed } = await loadDemo(id)
    if (!computed) throw new Error(`${id} has faults`)
    const { engine } = computed
    const undeclared = new Set<string>()
    for (const use of engine.uses) {
      const inputs = inputsGiven(use, engine)
      if (!inputs) continue
      const { calculation } = use
      for (const pair of movements(calculation, inputs)) {
        const [output = '', input = ''] = pair.split(' < ')
        if (!inputsOf(calculation, output).has(input)) undeclared.add(`${calculation.id}: ${pair}`)
      }
    }
    expect([...undeclared]).toEqual([])
  })
})
