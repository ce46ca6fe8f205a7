import { describe, expect, it } from 'vitest'
import { type Calculation, isRefusal } from '../../src/compute/calculation.ts'
import type { Engine } from '../../src/compute/engine/engine.ts'
import type { Use } from '../../src/compute/uses/use.ts'
import { toUnit } from '../../src/model/quantity/format-quantity.ts'
import { demos, loadDemo } from '../support/demo.ts'
import { evaluateFormula, NotClosed } from './support/evaluate-formula.ts'

type Checked = { readonly id: string; readonly printed: number; readonly given: number }

const bare = (si: number, unit: string | undefined): number =>
  unit === undefined ? si : toUnit(si, unit)

/** What the formula of each output gives, with this facility's numbers put in for its names. */
function workedByHand(use: Use, engine: Engine): readonly (Checked | string)[] {
  const calculation: Calculation = use.calculation
  const inputs = Object.fromEntries(
    (engine.worksheet(use.id)?.inputs ?? []).map((i) => [i.name, i.si]),
  )
  if (Object.keys(inputs).length < Object.keys(calculation.inputs).length) return []
  const names = Object.fromEntries(
    Object.entries(calculation.inputs).map(([name, spec]) => [
      name,
      bare(inputs[name] ?? Number.NaN, spec.formulaUnit),
    ]),
  )
  const answers = calculation.compute(inputs)
  for (const [name, spec] of Object.entries(calculation.outputs)) {
    const answer = answers[name]
    if (answer !== undefined && !isRefusal(answer)) names[name] ??= bare(answer, spec.formulaUnit)
  }
  return Object.entries(calculation.outputs).flatMap(
    ([name, spec]): readonly (Checked | string)[] => {
      const id = `${use.id}.${name}`
      const answer = answers[name]
      if (answer === undefined || isRefusal(answer)) return []
      try {
        const printed = evaluateFormula(spec.tex, { ...names, [name]: names[name] ?? 0 })
        return [{ id, printed, given: bare(answer, spec.formulaUnit) }]
      } catch (fault) {
        if (fault instanceof NotClosed) return [id]
        throw fault
      }
    },
  )
}

describe.each(demos)('printed formulas of %s', (id) => {
  it('give the number that stands beside them, wherever they name nothing but inputs', async () => {
    const { computed } = await loadDemo(id)
    if (!computed) throw new Error(`${id} has faults`)
    const all = computed.engine.uses.flatMap((use) => workedByHand(use, computed.engine))
    const checked = all.filter((a) => typeof a !== 'string')
    // Sums over readings and hours name more than their inputs; they have tests of their own.
    expect(checked.length / all.length).toBeGreaterThan(0.75)
    for (const { id: figure, printed, given } of checked) {
      // Constants of empirical formulas are printed to two or three figures.
      const apart = Math.abs(printed - given)
      expect(apart, `${figure}: ${printed} for ${given}`).toBeLessThanOrEqual(
        1e-3 * Math.abs(given) + 1e-12,
      )
    }
  })
})
