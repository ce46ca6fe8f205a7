import type { Text } from './text.ts'

/** A section of the binder, with the ids of its procedures in their order. */
export type ManualSection = {
  readonly id: string
  readonly number: number
  readonly title: string
  readonly about: Text
  readonly procedures: readonly string[]
}
