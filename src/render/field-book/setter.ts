import { bySignal, type ManualCaution } from '../../model/manual/caution.ts'
import type { ManualProcedure } from '../../model/manual/procedure.ts'
import type { Drawings } from '../drawings/drawings.ts'
import type { Html } from '../text/html.ts'
import { cautionBox } from '../views/caution-box.ts'
import { figureView } from '../views/figure-view.ts'
import type { Pen } from '../views/pen.ts'
import { type Block, block } from './block.ts'

/** What blocks are made with. */
export type Setter = {
  readonly pen: Pen
  readonly drawings: Drawings
  /** Cautions that have a page of their own. */
  readonly common: ReadonlySet<string>
  /** Where a procedure is found: on a page of this book, else in the binder. */
  readonly placeOf: (procedure: string, method?: string) => Html
  /** Heading of the page that a part stands on: no part repeats it. */
  readonly title: string
  /** Whether parts say their names. */
  readonly named: boolean
}

export const figuresBlock = (
  figures: readonly { readonly name: string; readonly label: string | undefined }[],
  pen: Pen,
): Block => block({ figures: figures.map((f) => figureView(f.name, pen, f.label)) })

/** One box, the worst first. */
export const cautionsBlock = (
  cautions: readonly ManualCaution[],
  before: ManualProcedure['before'],
  pen: Pen,
): Block => block({ box: cautionBox({ cautions: [...cautions].sort(bySignal), before }, pen) })
