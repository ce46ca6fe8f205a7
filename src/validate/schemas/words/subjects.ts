import * as z from 'zod'
import { id, line } from '../text.ts'

/**
 * Subjects under which a reader looks for a figure, in their order, each with its worksheets by
 * their ids. Which worksheets there are is known where numbers are worked out; they are held against
 * it where pages are checked (`src/render/site/check-subjects.ts`).
 */
export const subjects = z.array(z.strictObject({ id, title: line, worksheets: z.array(id).min(1) }))
