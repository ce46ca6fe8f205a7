import type { Calculation } from './calculation.ts'

const named = /@([A-Za-z](?:-?[A-Za-z0-9])*)/g

function follow(calculation: Calculation, output: string, found: Set<string>): void {
  const spec = calculation.outputs[output]
  if (!spec) throw new RangeError(`${calculation.id} has no output ${output}`)
  const all = Object.keys(calculation.inputs)
  const names =
    spec.restsOn === 'all'
      ? all
      : (spec.restsOn ?? [...spec.tex.matchAll(named)].map(([, name = '']) => name))
  for (const name of names) {
    if (name in calculation.inputs) found.add(name)
    // A name that is neither is a word of the formula.
    else if (name !== output && name in calculation.outputs) follow(calculation, name, found)
  }
}

/**
 * Names of the inputs that one output rests on: those in its formula, and those in the formulas of
 * the outputs that it names, so that a number is not called an estimate for the sake of an input
 * that it never meets.
 * @throws RangeError when the calculation has no such output.
 */
export function inputsOf(calculation: Calculation, output: string): ReadonlySet<string> {
  const found = new Set<string>()
  follow(calculation, output, found)
  return found
}
