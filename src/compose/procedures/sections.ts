import type { ManualSection } from '../../model/manual/section.ts'
import { type ComposeContext, itemsOf } from '../context.ts'

/** The sections of the binder that have procedures here, numbered in the order of the library. */
export const composeSections = ({ library, parts }: ComposeContext): readonly ManualSection[] =>
  itemsOf(library.sections)
    .map((section) => ({
      ...section,
      front: section.front === true,
      procedures: parts.procedures.filter((p) => p.section === section.id).map((p) => p.id),
    }))
    .filter((s) => s.procedures.length > 0)
    .map((s, i) => ({ ...s, number: i + 1 }))
