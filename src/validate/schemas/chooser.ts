import * as z from 'zod'
import { id, line } from './text.ts'

/** A question about what is seen; each symptom says which of its answers fit it. */
const question = z.strictObject({
  id,
  ask: line,
  answers: z.array(z.strictObject({ id, says: line })).min(2),
})

/** Something to do that tells causes apart, and where it is explained. */
const measure = z.strictObject({ id, do: line, procedure: id.optional() })

/** What leads from something seen to its cause. */
export const chooser = z.strictObject({
  /** In the order in which they are asked. */
  questions: z.array(question).min(1),
  measures: z.array(measure).min(1),
})

export type ChooserFile = z.output<typeof chooser>
