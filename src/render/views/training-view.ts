import type { Manual } from '../../model/manual.ts'
import type { DrawingPrinter } from './drawing-places.ts'
import type { Pen } from './pen.ts'

type Lesson = Pick<Manual['procedures'][number], 'id' | 'title' | 'training'>

/** What is taught of a procedure. */
export function lessonView({ id, title, training }: Lesson, pen: Pen, draw: DrawingPrinter) {
  const letters = pen.words.training.letters.split(' ')
  return {
    id,
    title,
    href: pen.context.procedureHref(id) ?? '',
    aims: training.aims.map(pen.line),
    show: training.show.map(pen.line),
    practice: training.practice.map(pen.line),
    drawing: draw(training.drawing),
    questions: training.questions.map((q) => ({
      ask: pen.line(q.ask),
      choices: q.choices.map((c, i) => ({ letter: letters[i] ?? '', text: pen.line(c) })),
      place: q.right,
      right: letters[q.right - 1] ?? '',
      why: pen.line(q.why),
    })),
  }
}
