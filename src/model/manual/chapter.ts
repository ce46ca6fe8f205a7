import type { Text } from './text.ts'

/** A chapter of running text, before or behind the procedures. */
export type ManualChapter = {
  readonly id: string
  readonly title: string
  readonly place: 'front' | 'back'
  readonly text: Text
}
