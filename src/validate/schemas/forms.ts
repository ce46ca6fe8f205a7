import * as z from 'zod'
import { id, line } from './text.ts'
import { when } from './when.ts'

/** What may stand ready in the first column of a form's table. */
export const formRows = ['survey-stations', 'races', 'machines', 'drains-and-gates'] as const
export type FormRows = (typeof formRows)[number]

/** A place to write: its width in sixths of the page, its height in lines. */
const box = z.strictObject({ label: line, wide: z.int().min(1).max(6), tall: z.int().min(1).max(14).optional() })

const form = z.strictObject({
  id,
  title: line,
  about: line,
  when: when.optional(),
  boxes: z.array(box).min(1),
  /** Rows either by number or with something ready in the first column. */
  table: z.strictObject({ heads: z.array(line).min(2).max(10), rows: z.int().min(2).max(30).optional(), first: z.enum(formRows).optional() }).optional(),
  after: z.array(box).optional(),
  sign: z.array(line).min(1).max(3),
})

export const forms = z.strictObject({ forms: z.array(form).min(1) })

export type Form = z.infer<typeof form>
