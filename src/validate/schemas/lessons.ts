import * as z from 'zod'
import { id, line } from './text.ts'

/** The lessons of a role, by the procedures that they are of. */
const course = z.strictObject({
  id,
  title: line,
  about: line,
  lessons: z.array(id).min(2),
})

export const lessons = z.strictObject({ courses: z.array(course).min(1) })

export type Course = z.infer<typeof course>
