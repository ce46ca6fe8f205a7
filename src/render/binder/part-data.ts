import type { ManualProcedure } from '../../model/manual/procedure.ts'
import type { Manual } from '../../model/manual.ts'
import { fill } from '../../model/pattern.ts'
import { frontDrawings } from '../drawings/homes.ts'
import { type Html, html } from '../text/html.ts'
import { emergencyView } from '../views/emergency-view.ts'
import { facilityView } from '../views/facility-view.ts'
import { findingsView } from '../views/findings-view.ts'
import { hazardsView } from '../views/hazards-view.ts'
import { procedureView } from '../views/procedure-view.ts'
import { schedulesView } from '../views/schedules-view.ts'
import { signalView } from '../views/signal-view.ts'
import { symptomsView } from '../views/symptoms-view.ts'
import { lessonView } from '../views/training-view.ts'
import type { Book } from './book.ts'
import { contentsOf, frontContents } from './contents.ts'
import type { BackPart } from './divided-parts.ts'
import { worksheetsView } from './worksheets.ts'

type Section = Manual['sections'][number]

/** Lines to write on, as many as a page has room for. */
const ruled = Array.from({ length: 21 })

type Method = ReturnType<typeof procedureView>['methods'][number]

/** Ways of working, two in a row where neither has figures in the margin. */
function methodRows(methods: readonly Method[]): readonly MethodRow[] {
  const isPlain = (m: Method | undefined): boolean =>
    m?.steps.every((s) => s.figures.length === 0) ?? false
  const rows: MethodRow[] = []
  for (let i = 0; i < methods.length; i++) {
    const pair = isPlain(methods[i]) && isPlain(methods[i + 1])
    rows.push({ pair, methods: methods.slice(i, i + (pair ? 2 : 1)) })
    if (pair) i++
  }
  return rows
}

type MethodRow = { readonly pair: boolean; readonly methods: readonly Method[] }

function procedureData({ pen, words, draw, drawingsOf, reckoner }: Book, p: ManualProcedure) {
  const view = procedureView(p, pen, (method) => `#${p.id}-${method}`, drawingsOf(p.id))
  const drawings = [view.drawing, ...view.methods.flatMap((m) => m.drawings)]
  return {
    ...view,
    when: p.triggers.slice(0, 1).map(pen.line),
    rows: methodRows(view.methods),
    drawings: drawings.filter((d) => d.toString() !== ''),
    recordOf: fill(words.binder.recordOf, { title: view.title.toString() }),
    recordRows: ruled,
    reckoners: p.reckoners.map(reckoner),
    lesson: lessonView(p, pen, draw),
    lessonOf: fill(words.binder.lesson, { title: view.title.toString() }),
  }
}

/** A section with its procedures. */
export function sectionData(book: Book, section: Section) {
  const { manual } = book
  return {
    ...section,
    about: book.pen.line(section.about),
    noteRows: ruled,
    procedures: section.procedures.map((id) => {
      const p = manual.procedures.find((other) => other.id === id)
      if (!p) throw new RangeError(`section ${section.id} names ${id}`)
      return procedureData(book, p)
    }),
  }
}

/** The oval and its sections, which stand at the front. */
export const glanceDrawings = ({ draw }: Book) => {
  const [plan, sections] = frontDrawings.map(draw)
  return { plan, sectionDrawing: sections }
}

const chaptersAt = (
  { manual, pen }: Book,
  place: Manual['chapters'][number]['place'],
): readonly { readonly id: string; readonly title: string; readonly text: Html }[] =>
  manual.chapters
    .filter((c) => c.place === place)
    .map((c) => ({ id: c.id, title: c.title, text: pen.block(c.text) }))

/** Cover, contents, lists, record of revisions, and the facility at a glance. */
export const frontData = (book: Book) => {
  const { manual, words, pen, drawings } = book
  return {
    cover: html(drawings.plan?.at('page') ?? ''),
    material: words.materials[manual.facility.material],
    emergency: emergencyView(pen, 'paper'),
    readFirst: manual.fieldBook.readFirst,
    inFront: frontContents(book),
    contents: contentsOf(book),
    drawings: book.drawn(),
    forms: manual.forms.map((f) => pen.line(f.title)),
    at: facilityView(manual, pen),
    front: chaptersAt(book, 'front'),
    findings: findingsView(manual, pen),
  }
}

/** Data of each part behind the sections. */
export const backData: Readonly<Record<BackPart['id'], (book: Book) => object>> = {
  plans: ({ manual, pen, drawings, draw }) => ({
    plans: schedulesView(manual, pen, drawings, 'paper', draw),
  }),
  symptoms: ({ manual, pen }) => ({ symptoms: symptomsView(manual, pen) }),
  reckoners: ({ manual, reckoner }) => ({ reckoners: manual.reckoners.map(reckoner) }),
  safety: ({ manual, pen }) => ({
    signals: signalView(pen),
    hazards: hazardsView(manual, pen),
  }),
  worksheets: ({ pen }) => ({ worksheets: worksheetsView(pen) }),
  glossary: (book) => ({
    terms: book.manual.terms.map((t) => ({ term: t.term, means: book.pen.line(t.means) })),
    closing: chaptersAt(book, 'back'),
    termIndex: book.manual.termIndex,
    sources: book.manual.sources,
  }),
}
