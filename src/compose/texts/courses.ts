import type { ManualCourse } from '../../model/manual/course.ts'
import { type ComposeContext, itemsOf } from '../context.ts'

/** Lessons by role, as far as this facility has their procedures. */
export function composeCourses({ library, parts }: ComposeContext): readonly ManualCourse[] {
  const here = new Set(parts.procedures.map((p) => p.id))
  return itemsOf(library.courses)
    .map(({ id, title, about, lessons, drawings = false }) => ({
      id,
      title,
      about,
      lessons: lessons.filter((lesson) => here.has(lesson)),
      drawings,
    }))
    .filter(({ lessons }) => lessons.length > 0)
}
