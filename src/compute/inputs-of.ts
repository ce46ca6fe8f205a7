import type { Calculation } from './calculation.ts'
import { namesOf } from './formula/put-names.ts'
import { readFormula } from './formula/read-formula.ts'

function follow(calculation: Calculation, output: string, found: Set<string>): void {
  const spec = calculation.outputs[output]
  if (!spec) throw new RangeError(`${calculation.id} has no output ${output}`)
  const { restsOn } = spec
  const names =
    restsOn === 'all'
      ? Object.keys(calculation.inputs)
      : (restsOn ?? namesOf(readFormula(spec.tex)))
  for (const name of names) {
    if (name in calculation.inputs) found.add(name)
    else if (name !== output) follow(calculation, name, found)
  }
}

/**
 * Names of the inputs that one output rests on: those in its formula, and those in the formulas of
 * the outputs that it names, so that a number is not called an estimate for the sake of an input
 * that it never meets.
 * @returns In the order in which the calculation declares them.
 * @throws RangeError when the calculation has no such output.
 */
export function inputsOf(calculation: Calculation, output: string): ReadonlySet<string> {
  const found = new Set<string>()
  follow(calculation, output, found)
  return new Set(Object.keys(calculation.inputs).filter((name) => found.has(name)))
}
