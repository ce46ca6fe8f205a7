import * as z from 'zod'
import { id, line } from '../text.ts'

// Which entries there are is said by each drawing; they are held against it where drawings are
// checked (`src/render/drawings/check-drawings.ts`).

/** Title, for lists, and caption of each drawing, by its name. */
export const drawings = z.record(id, z.strictObject({ title: line, caption: line }))

/** Words inside drawings, by the group that a drawing names. */
export const labels = z.record(id, z.record(z.string(), line))
