import type { Text } from './text.ts'

/** The lessons that a role takes, in their order. */
export type ManualCourse = {
  readonly id: string
  readonly title: string
  readonly about: Text
  /** Procedures of this manual. */
  readonly lessons: readonly string[]
  /** Whether their drawings stand with them on the site, not only with the procedures. */
  readonly drawings: boolean
}
