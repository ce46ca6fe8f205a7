import * as z from 'zod'
import { contactRoles } from './contacts.ts'
import { says } from './form-says.ts'
import { id, line } from './text.ts'

/** A path of the facility file, lists passed without a number: `oval.width.turns`. */
const path = z
  .string()
  .regex(/^[a-z][a-z0-9-]*(\.[a-z][a-z0-9-]*)*$/, { error: 'a path such as oval.width.turns' })

/** What belongs together on one screen; entries go to the subject with the longest path before theirs. */
const subject = z.strictObject({
  id,
  title: line,
  lead: line,
  entries: z.array(path),
})

/** One of the questions that come first: it fills in entries, or names a person. */
const first = z.strictObject({
  id,
  subject: id,
  ask: line,
  why: line,
  how: line,
  entries: z.array(path).min(1).optional(),
  person: z.enum(contactRoles).optional(),
  /** What happens until somebody knows; left out where there is no manual without an answer. */
  until: line.optional(),
})

/** The page on which a facility file is filled in. */
export const form = z.strictObject({
  subjects: z.array(subject).min(2),
  first: z.array(first).min(1),
  /** What the choices of an entry are called, by its path. */
  choices: z.record(path, z.record(z.string(), line)),
  says,
})

export type FormFile = z.output<typeof form>
export type FormSubject = FormFile['subjects'][number]
export type FirstQuestion = FormFile['first'][number]
