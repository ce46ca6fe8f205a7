import type { ManualSymptom } from '../../model/manual/symptom.ts'
import { applies } from '../applies.ts'
import { type ComposeContext, itemsOf } from '../context.ts'

/** What may be seen on this track, with the causes that some procedure here mends. */
export function composeSymptoms({
  library,
  here,
  parts,
}: ComposeContext): readonly ManualSymptom[] {
  const present = new Set(parts.procedures.map((p) => p.id))
  return itemsOf(library.symptoms).flatMap((s) => {
    const causes = s.causes.filter((c) => present.has(c.procedure) && applies(c.when, here))
    return causes.length === 0 ? [] : [{ ...s, causes }]
  })
}
