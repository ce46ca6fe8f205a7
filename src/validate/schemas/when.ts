import * as z from 'zod'
import { capabilities } from '../../model/capability.ts'
import { materials, rails } from '../../model/oval-choices.ts'
import { figureName } from './text.ts'

const list = <T extends z.ZodType>(item: T) => z.union([item, z.array(item).min(1)])

/**
 * Under which circumstances a procedure, step, caution or branch belongs in a facility's manual.
 * All entries must hold; a list under `surface`, `rail` or `any` means one of them, under `has` and
 * `lacks` every one of them. Figures under `above-zero` must all have a value above zero here,
 * those under `zero` must be nought; a figure without a value is neither.
 */
export const when = z.strictObject({
  surface: list(z.enum(materials)).optional(),
  rail: list(z.enum(rails)).optional(),
  units: z.enum(['us', 'metric']).optional(),
  has: list(z.enum(capabilities)).optional(),
  any: list(z.enum(capabilities)).optional(),
  lacks: list(z.enum(capabilities)).optional(),
  'above-zero': list(figureName).optional(),
  zero: list(figureName).optional(),
})

export type When = z.infer<typeof when>
