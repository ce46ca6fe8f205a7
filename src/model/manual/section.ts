import type { Text } from './text.ts'

/** A section of the binder, with the ids of its procedures in their order. */
export type ManualSection = {
  readonly id: string
  readonly number: number
  readonly title: string
  readonly about: Text
  /** Its procedures stand on the first page of the site, each with its first number. */
  readonly front: boolean
  readonly procedures: readonly string[]
}
