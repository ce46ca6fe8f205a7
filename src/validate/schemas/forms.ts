import * as z from 'zod'
import { capabilities } from '../../model/capability.ts'
import { keptWords, phoneFields } from '../../model/records.ts'
import { id, line } from './text.ts'
import { when } from './when.ts'

/** What may stand ready in the first column of a form's table. */
const formRows = [
  'survey-stations',
  'races',
  'drains-and-gates',
  'seen-at-hand-over',
  'checks',
] as const
export type FormRows = (typeof formRows)[number]

/** What it is on a phone, which keeps some forms; see `phoneFields`. */
const keeps = z.array(z.enum(phoneFields)).min(1).optional()

/**
 * A place to write: its width in sixths of the page, its height in lines of handwriting. With
 * `choices` it is ticked instead.
 */
const box = z.strictObject({
  label: line,
  wide: z.int().min(1).max(6),
  tall: z.int().min(1).max(14).optional(),
  choices: z.array(line).min(2).max(8).optional(),
  keeps,
})

/**
 * A column: its head, and its width against the others. In a column of checks a tick is the whole
 * answer.
 */
const column = z.union([
  line,
  z.strictObject({
    head: line,
    wide: z.number().min(0.3).max(8).optional(),
    check: z.literal(true).optional(),
    keeps,
  }),
])

const table = z.strictObject({
  columns: z.array(column).min(1).max(14),
  /** What stands ready; without it all rows are blank. */
  first: z.enum(formRows).optional(),
  /** After the first column, one column for each line of the depth survey. */
  across: z.literal(true).optional(),
  /** Blank rows at the least; the page is filled with more. With none, what stands ready is all. */
  spare: z.int().min(0).max(30).optional(),
  /** On a phone its lines are the words kept under this name. */
  keeps: z.enum(keptWords).optional(),
})

/**
 * Something looked at on a machine; on those that can do one of `can`, and none of `except`. Where
 * more than a tick is the answer, it is written.
 */
const check = z.strictObject({
  look: line,
  can: z.array(z.enum(capabilities)).min(1).optional(),
  except: z.array(z.enum(capabilities)).min(1).optional(),
  write: z.literal(true).optional(),
})

const form = z.strictObject({
  id,
  title: line,
  about: line,
  /** Who fills it in, at which moment, and where it is kept. */
  who: line,
  moment: line,
  kept: line,
  when: when.optional(),
  /** It can be filled in on a phone too; in a word or two, what the phone calls it. */
  phone: line.max(24).optional(),
  /** One form for each machine of the facility, with its name in the title. */
  each: z.literal('machine').optional(),
  boxes: z.array(box).min(1),
  table: table.optional(),
  checks: z.array(check).min(1).optional(),
  after: z.array(box).optional(),
  sign: z.array(line).min(1).max(3),
})

export const forms = z.strictObject({ forms: z.array(form).min(1) })

export type Form = z.infer<typeof form>
