import { fill } from '../../../model/pattern.ts'
import { drawingNamed } from '../../drawings/drawings.ts'
import { html } from '../../text/html.ts'
import { createDrawingPrinter, drawingPlace, printingOnce } from '../../views/drawing-places.ts'
import { trainingView } from '../../views/training-view.ts'
import { lessonDrawing, lessonMinutes } from '../learn-minutes.ts'
import type { SiteContext, SitePage } from '../page.ts'

/** Minutes are told in steps of five, upward. */
const step = 5

/** Lessons by role, with the time that they take. */
const courses = ({ manual, pen, words }: SiteContext) =>
  manual.courses.map(({ id, title, about, lessons }) => {
    const procedures = lessons.flatMap(
      (lesson) => manual.procedures.find((p) => p.id === lesson) ?? [],
    )
    const minutes = Math.ceil(lessonMinutes(procedures) / step) * step
    return {
      id,
      title,
      about: pen.line(about),
      minutes: fill(words.training.minutes, { minutes }),
      all: lessons.join(' '),
      count: fill(words.training.lessons, { count: procedures.length }),
      lessons: procedures.map((p) => ({ id: p.id, title: p.title })),
    }
  })

/** Each drawing stands with the first lesson that shows it; the others lead there. */
function lessons({ manual, pen, drawings }: SiteContext) {
  const print = printingOnce(createDrawingPrinter(drawings, 'phone'))
  const views = trainingView(manual, pen, () => html(''))
  return views.map((view, i) => {
    const id = manual.procedures.slice(i, i + 1).map(lessonDrawing)[0]
    const drawing = drawingNamed(drawings, id)
    return {
      ...view,
      // A question about a drawing cannot be answered without it.
      about: manual.procedures[i]?.training.drawing !== undefined,
      drawing: print(id),
      shows: drawing && id ? { place: drawingPlace(id), called: drawing.called } : undefined,
    }
  })
}

export const learn: SitePage = {
  id: 'learn',
  words: ['menu', 'link', 'about'],
  door: true,
  data: (site) => ({
    courses: courses(site),
    whose: site.manual.facility.id,
    training: lessons(site),
    jumps: site.manual.procedures.map(({ id, title }) => ({ id, title })),
  }),
}
