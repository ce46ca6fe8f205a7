import type { ManualProcedure } from '../../model/manual/procedure.ts'

/** Words that a slow reader reads in a minute, aloud or on a bright day; common practice, no source. */
const wordsInMinute = 130
/** What it takes to look at a drawing, and to think about a question, minutes; the same. */
const [look, think] = [0.5, 0.5]

const wordsIn = (texts: readonly string[]): number =>
  texts.join(' ').split(/\s+/).filter(Boolean).length

/** What a lesson shows: what its questions are about, else what shows the work best. */
export const lessonDrawing = ({ training, sheet, methods }: ManualProcedure): string | undefined =>
  training.drawing ??
  sheet.drawing ??
  methods.flatMap(({ steps }) => steps).find(({ drawing }) => drawing !== undefined)?.drawing

/** How long lessons take on a phone, minutes. */
export function lessonMinutes(lessons: readonly ManualProcedure[]): number {
  return lessons.reduce((sum, lesson) => {
    const { title, training } = lesson
    const { aims, show, practice, questions } = training
    const texts = [title, ...aims, ...show, ...practice]
    const asked = questions.flatMap(({ ask, choices, why }) => [ask, ...choices, why])
    return (
      sum +
      wordsIn([...texts, ...asked]) / wordsInMinute +
      (lessonDrawing(lesson) === undefined ? 0 : look) +
      think * questions.length
    )
  }, 0)
}
