import * as z from 'zod'
import { line } from './text.ts'

/** What stands in where nobody has said; the note says why just that. */
const typical = z.strictObject({
  us: z.string(),
  metric: z.string(),
  basis: z.enum(['rule', 'choice', 'published', 'common-practice', 'memory']),
  sources: z.array(z.string()).min(1),
  note: line,
})

const field = {
  label: line,
  kind: z.string(),
  range: z.tuple([z.string(), z.string()]),
  howTo: line,
  /** As it is typed, where the usual value or that of its kind would mislead. */
  example: z.strictObject({ us: z.string(), metric: z.string() }).optional(),
}

/** shared/facts.json, of which the texts belong to the words of the manual. */
export const facts = z.strictObject({
  about: z.string(),
  facts: z.record(
    z.string(),
    z.strictObject({
      ...field,
      // One value, or one for each material.
      typical: typical
        .partial()
        .extend({ byMaterial: z.record(z.string(), typical).optional() })
        .optional(),
    }),
  ),
  gear: z.record(z.string(), z.strictObject(field)),
  gearTypical: z.record(z.string(), typical),
})

export type FactsFile = z.output<typeof facts>
