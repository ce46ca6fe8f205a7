import type { Material } from './oval-choices.ts'

/** What is said of facts, by their paths, and of the fields that any machine may have. */
export type FactWords = {
  /** Plain name: "turn radius at the rail". */
  readonly label: (path: string) => string
  /** How it is measured in the field. */
  readonly howTo: (path: string) => string
  /** Why just that value stands in where nobody has said. */
  readonly why: (path: string, material: Material) => string
  readonly fieldLabel: (field: string) => string
  readonly fieldHowTo: (field: string) => string
}
