import { fill } from '../../../model/pattern.ts'
import { drawingNamed } from '../../drawings/drawings.ts'
import { html } from '../../text/html.ts'
import { citeOnSite, createDrawingPrinter, drawingPlace } from '../../views/drawing-places.ts'
import { lessonView } from '../../views/training-view.ts'
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

/**
 * Lessons that show their drawing: what their questions are about, and what the roles look at that
 * are taught with drawings.
 */
function withDrawing({ manual }: SiteContext): ReadonlySet<string> {
  const drawn = manual.courses.filter(({ drawings }) => drawings).flatMap((c) => c.lessons)
  const asked = manual.procedures.filter((p) => p.training.drawing !== undefined)
  return new Set([...drawn, ...asked.map(({ id }) => id)])
}

/**
 * Each drawing stands with the first lesson that shows it, and the others lead there; what no lesson
 * shows is one touch away, where the work is told.
 */
function lessons(site: SiteContext) {
  const { manual, words, pen, drawings } = site
  const print = createDrawingPrinter(drawings, 'phone')
  const cite = citeOnSite(drawings, manual, words, { up: '' })
  const drawn = withDrawing(site)
  const shown = new Set(manual.procedures.filter((p) => drawn.has(p.id)).map(lessonDrawing))
  const printed = new Set<string>()
  /** How a lesson shows its drawing: itself, where it stands on this page, or on which page. */
  const looked = (lesson: string, id: string | undefined) => {
    const drawing = drawingNamed(drawings, id)
    if (id === undefined || !drawing) return {}
    if (!shown.has(id)) return { look: cite(id) }
    const shows = { place: drawingPlace(id), called: drawing.called }
    if (printed.has(id) || !drawn.has(lesson)) return { shows }
    printed.add(id)
    return { shows, drawing: print(id) }
  }
  return manual.procedures.map((p) => ({
    ...lessonView(p, pen, () => html('')),
    drawing: undefined,
    // A question about a drawing cannot be answered without it.
    about: p.training.drawing !== undefined,
    ...looked(p.id, lessonDrawing(p)),
  }))
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
