import type { Manual } from '../../model/manual.ts'
import type { Words } from '../../validate/schemas/words.ts'

/** What a drawing is made from. */
export type DrawingContext = {
  readonly manual: Manual
  readonly words: Words['drawings']
  /** A quantity as printed; empty when it is not known, so that its label is left out. */
  readonly q: (name: string) => string
  readonly caption: string
}
