import * as z from 'zod'
import { id, line } from '../text.ts'
import { holding } from './group.ts'

// Which entries there are is said by each drawing; they are held against it where drawings are
// checked (`src/render/drawings/check-drawings.ts`).

/** Number, title for lists, and caption of each drawing, by its name. */
export const drawings = z.record(
  id,
  z.strictObject({ number: z.int().min(1), title: line, caption: line }),
)

/** How a drawing is named, and where it is found when it stands elsewhere. */
export const drawing = z.strictObject({
  number: holding('number'),
  front: holding('drawing'),
  elsewhere: holding('drawing', 'place'),
})

/** Words inside drawings, by the group that a drawing names. */
export const labels = z.record(id, z.record(z.string(), line))
