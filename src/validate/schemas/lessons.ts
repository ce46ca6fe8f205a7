import * as z from 'zod'
import { id, line } from './text.ts'

/** The lessons of a role, by the procedures that they are of. */
const course = z.strictObject({
  id,
  title: line,
  about: line,
  lessons: z.array(id).min(2),
  /** Their drawings stand with them on the site; those of other lessons are one touch away. */
  drawings: z.literal(true).optional(),
})

export const lessons = z.strictObject({ courses: z.array(course).min(1) })

export type Course = z.infer<typeof course>
