import type { Text } from './text.ts'

/** What a finding belongs to in the facility file. */
type Ask = {
  /** Path of the entry, with dots. */
  readonly entry: string
  /** Of contacts: the role that nobody has. */
  readonly role: string | undefined
  /** Whether anything stands there. */
  readonly isSaid: boolean
}

/** A usual value that stands where nobody has said anything. */
export type Guess = {
  /** Path of the fact, with dots. */
  readonly path: string
  readonly label: string
  /** As it is printed. */
  readonly text: string
}

/** What this facility has, measured against what the figures ask. */
export type Finding = {
  readonly id: string
  readonly severity: 'serious' | 'plan' | 'note'
  readonly title: Text
  readonly text: Text
  readonly do: Text
  readonly figures: readonly string[]
  /** The usual values that it rests on most; none where all of it has been said or measured. */
  readonly guesses: readonly Guess[]
  /** The entry of the facility file that it belongs to. */
  readonly ask: Ask
  /** Where in the facility file it comes from, such as `facility.yaml:31`. */
  readonly where: readonly string[]
}

/** A value that stands in for a measurement, and how much hangs on it. */
export type ToMeasure = {
  /** What `of:` of a measurement calls it. */
  readonly of: string
  readonly label: string
  readonly text: string
  readonly howTo: string
  /** How many figures move when it is a tenth off, and which moves most by how many percent. */
  readonly figures: number
  readonly most: string
  readonly percent: number
}
