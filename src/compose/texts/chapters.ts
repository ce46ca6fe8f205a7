import type { ManualChapter } from '../../model/manual/chapter.ts'
import { type ComposeContext, itemsOf } from '../context.ts'

/** The chapters of running text in their order. */
export const composeChapters = ({ library }: ComposeContext): readonly ManualChapter[] =>
  itemsOf(library.chapters)
    .toSorted((a, b) => a.order - b.order)
    .map(({ id, title, place, text }) => ({ id, title, place, text }))
