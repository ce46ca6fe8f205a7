import * as z from 'zod'
import { id, line } from './text.ts'

/** Dates and hours that one reader takes into a calendar; race days are in every one. */
const calendar = z
  .strictObject({
    id,
    title: line,
    about: line,
    /** Tables of plans whose rows have dates. */
    tables: z.array(id).min(1).optional(),
    /** Roles of rows that say who works when. */
    shifts: z.array(id).min(1).optional(),
  })
  .refine((c) => c.tables !== undefined || c.shifts !== undefined, {
    error: '`tables:` or `shifts:`, or both',
  })

/** The file `content/calendars.yaml`. */
export const calendars = z.strictObject({ calendars: z.array(calendar).min(1) })

export type Calendar = z.infer<typeof calendar>
