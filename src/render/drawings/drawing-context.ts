import type { Manual } from '../../model/manual.ts'

/** What a drawing is made from. */
export type DrawingContext = {
  readonly manual: Manual
  readonly words: Readonly<Record<string, string>>
  /** A quantity as printed; empty when it is not known, so that its label is left out. */
  readonly q: (name: string) => string
  readonly caption: string
}
