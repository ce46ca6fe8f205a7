import * as z from 'zod'
import { capabilities } from '../../model/capability.ts'
import { gearFields } from '../../model/fact-spec.ts'
import { gearQuantity } from './quantity.ts'
import { date, id, line } from './text.ts'

/** Whose a machine is. */
export const ownerships = ['own', 'borrowed', 'hired'] as const

/** A machine: what it can do, and its measures as far as they are known. */
export const machine = z.strictObject({
  id,
  name: line,
  can: z.array(z.enum(capabilities)).min(1),
  from: z.enum(ownerships),
  owner: line.optional(),
  note: line.optional(),
  /** The only days on which it is here; without them it is here every day. */
  days: z.array(date).min(1).optional(),
  ...Object.fromEntries(gearFields.map((field) => [field, gearQuantity(field)])),
})
