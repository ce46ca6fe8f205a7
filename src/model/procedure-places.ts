import type { ManualCaution } from './manual/caution.ts'
import type { ManualProcedure } from './manual/procedure.ts'

/** Parts of a printed procedure that can be pointed to, beside its steps. */
export type ProcedurePart = 'head' | 'measure' | 'checks' | 'failures' | 'stop' | 'records' | 'why'

/**
 * Id of a part in any document that prints the procedure once. The middle word keeps it apart from
 * the ids of methods.
 */
export const partPlace = (procedure: string, part: ProcedurePart): string =>
  `${procedure}-part-${part}`

/** Id of a step in any document that prints the procedure once. */
export const stepPlace = (procedure: string, method: string, step: number): string =>
  `${procedure}-${method}-step-${step}`

/**
 * Cautions at the head of a procedure: one that stands above a step of every method need not stand
 * there too.
 */
export const headCautions = (p: ManualProcedure): readonly ManualCaution[] =>
  p.cautions.filter(
    (c) => !p.methods.every((m) => m.steps.some((s) => s.cautions.some((own) => own.id === c.id))),
  )
