import type { FirstQuestion, FormFile, FormSubject } from '../../validate/schemas/form.ts'
import type { Question } from './question.ts'

/** What is asked on one screen. */
export type Screen = {
  readonly subject: FormSubject
  /** Of the questions that come first, with their numbers. */
  readonly first: readonly { readonly number: number; readonly question: FirstQuestion }[]
  /** All others of the subject, in the order of the schema. */
  readonly more: readonly Question[]
}

const isBelow = (path: readonly string[], entry: string): boolean => {
  const plain = path.join('.')
  return plain === entry || plain.startsWith(`${entry}.`)
}

/**
 * The subject of a question: the one that has the longest beginning of its path. What no subject
 * has, as any new group of the file, belongs to the one without entries.
 */
function subjectOf({ path }: Question, subjects: FormFile['subjects']): FormSubject | undefined {
  const fitting = subjects.flatMap((subject) =>
    subject.entries
      .filter((entry) => isBelow(path, entry))
      .map((entry) => ({ subject, length: entry.length })),
  )
  return (
    fitting.sort((a, b) => b.length - a.length)[0]?.subject ??
    subjects.find((s) => s.entries.length === 0)
  )
}

/** All screens, each with its questions; every question stands on exactly one. */
export function screensOf(
  { subjects, first }: Pick<FormFile, 'subjects' | 'first'>,
  questions: readonly Question[],
): readonly Screen[] {
  const asked = new Set(first.flatMap((question) => question.entries ?? []))
  return subjects.map((subject) => ({
    subject,
    first: first
      .map((question, i) => ({ number: i + 1, question }))
      .filter(({ question }) => question.subject === subject.id),
    more: questions.filter(
      (question) =>
        subjectOf(question, subjects) === subject && !asked.has(question.path.join('.')),
    ),
  }))
}
