import * as z from 'zod'
import { type FactSpec, factSpec, gearSpec } from '../../model/fact-spec.ts'
import type { Problem } from '../../model/problem.ts'
import type { Quantity } from '../../model/quantity/read-quantity.ts'
import type { Path, SourceTree } from '../../read/read-yaml.ts'
import { readAs, readMeasured } from '../read-measured.ts'

const fieldFor = (spec: FactSpec) =>
  z.unknown().transform((written, ctx): Quantity => {
    const read = readAs(spec, written)
    if ('params' in read) {
      ctx.addIssue({ code: 'custom', message: read.message, params: read.params, input: written })
      return z.NEVER
    }
    return read
  })

/** The field of a fact, by its path: the kind, range and wording come from the reference data. */
export function quantity(path: string) {
  const spec = factSpec(path)
  if (!spec) throw new RangeError(`no fact ${path}`)
  return fieldFor(spec).optional()
}

/** The field of a machine. */
export function gearQuantity(field: string) {
  const spec = gearSpec(field)
  if (!spec) throw new RangeError(`no field ${field}`)
  return fieldFor(spec).optional()
}

/** The same for what stands at a path of a file. */
export function readMeasuredAt(
  tree: SourceTree,
  at: Path,
  fact: string,
  written: unknown,
): Quantity | Problem {
  const read = readMeasured(fact, written)
  if (!('params' in read)) return read
  const { code, hint } = read.params
  return tree.problem(tree.placeOf(at), code, read.message, { hint })
}
