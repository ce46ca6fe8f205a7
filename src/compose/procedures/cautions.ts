import type { ManualCaution } from '../../model/manual/caution.ts'
import { applies } from '../applies.ts'
import { type ComposeContext, itemsOf } from '../context.ts'

/** Cautions that can stand in this manual, by id. */
export const cautionsHere = ({
  library,
  here,
}: ComposeContext): ReadonlyMap<string, ManualCaution> =>
  new Map(
    itemsOf(library.cautions)
      .filter((c) => applies(c.when, here))
      .map(({ id, signal, hazard, avoid, more, machine, sources }) => [
        id,
        { id, signal, hazard, avoid, more, machine: machine === true, sources },
      ]),
  )

/** All cautions that some procedure or card here uses, in the order in which they are met. */
export function composeCautions({ parts }: ComposeContext): readonly ManualCaution[] {
  const ofProcedures = parts.procedures.flatMap((p) => [
    ...p.cautions,
    ...p.methods.flatMap((m) => m.steps.flatMap((s) => s.cautions)),
  ])
  const met = [...ofProcedures, ...parts.cards.flatMap((c) => c.cautions)]
  return [...new Map(met.map((c) => [c.id, c])).values()]
}
