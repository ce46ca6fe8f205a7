import * as z from 'zod'
import { contactRoles } from './contacts.ts'
import { figureName, id, line } from './text.ts'
import { when } from './when.ts'

const figure = z.strictObject({ figure: figureName, label: line, when: when.optional() })

const card = z.strictObject({
  id,
  title: line,
  /** Whose pocket it is for, in a few words. */
  for: line,
  when: when.optional(),
  /**
   * In order of weight: the first of them that are known here are printed, as many as a card has
   * room for.
   */
  figures: z.array(figure).min(3).max(10),
  /** Tables by id: the first that has something to say here is printed. */
  reckoners: z.array(id).min(1).optional(),
  cautions: z.array(id).min(1).max(3),
  /** Whom to call, in this order; a role that nobody fills is left out. */
  phones: z.array(z.enum(contactRoles)).min(1).optional(),
})

/** Cards for the pocket: the few numbers that one person needs at work. */
export const cards = z.strictObject({ cards: z.array(card).min(1) })

export type Card = z.infer<typeof card>
