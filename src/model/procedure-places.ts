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
