import type { Manual } from '../../model/manual.ts'
import { drawingFigure, type Drawing } from '../drawings/drawing.ts'
import { renderDrawings } from '../drawings/drawings.ts'
import type { RenderAssets } from '../assets.ts'
import { html } from '../text/html.ts'
import { createTemplates } from '../text/templates.ts'
import { bySignal, cautionView } from '../views/caution-view.ts'
import { facilityView } from '../views/facility-view.ts'
import { findingsView } from '../views/findings-view.ts'
import { hazardsView } from '../views/hazards-view.ts'
import { createPen, type Pen } from '../views/pen.ts'
import { plansView } from '../views/plans-view.ts'
import { procedureView } from '../views/procedure-view.ts'
import { reckonerView } from '../views/reckoner-view.ts'
import { signalView } from '../views/signal-view.ts'
import { symptomsView } from '../views/symptoms-view.ts'
import { trainingView } from '../views/training-view.ts'
import { worksheetView } from '../views/worksheet-view.ts'
import { binderPageRules, type NamedPage } from './page-rules.ts'

type BackPart = { readonly id: string; readonly title: string; readonly number: number }

const backParts = ['plans', 'symptoms', 'reckoners', 'safety', 'training', 'worksheets', 'glossary'] as const

const drawingOf = (drawings: Readonly<Record<string, Drawing>>, id: string | undefined) => {
  const d = id === undefined ? undefined : drawings[id]
  return d ? drawingFigure(d, 'paper') : html('')
}

function namedPages(manual: Manual, back: readonly BackPart[], words: RenderAssets['words']): { front: NamedPage[]; body: NamedPage[] } {
  const front = ['front'].map((name) => ({ name, left: manual.facility.name, right: words.binder['subject'] ?? '', tab: undefined }))
  const procedures = manual.sections.flatMap((s) =>
    s.procedures.map((id) => ({ name: `p-${id}`, left: `${s.number}  ${s.title}`, right: manual.procedures.find((p) => p.id === id)?.title ?? '', tab: { text: String(s.number), place: s.number - 1 } })),
  )
  const rest = back.map((b) => ({ name: `b-${b.id}`, left: `${b.number}  ${b.title}`, right: '', tab: { text: String(b.number), place: b.number - 1 } }))
  return { front, body: [...procedures, ...rest] }
}

/** Everything that the book template is given. */
function bookData(manual: Manual, words: RenderAssets['words'], pen: Pen, drawings: Readonly<Record<string, Drawing>>, back: readonly BackPart[]) {
  const shown = new Set<string>()
  const sections = manual.sections.map((s) => ({
    ...s,
    about: pen.line(s.about),
    procedures: s.procedures.map((id, i) => {
      const p = manual.procedures.find((q) => q.id === id)
      if (!p) throw new RangeError(`section ${s.id} names ${id}`)
      // A drawing that two procedures share is printed once, where it is met first.
      const drawing = p.sheet.drawing !== undefined && !shown.has(p.sheet.drawing) ? p.sheet.drawing : undefined
      if (drawing !== undefined) shown.add(drawing)
      return { ...procedureView(p, pen, (m) => `#${id}-${m}`), opens: i === 0, sectionNumber: s.number, sectionTitle: s.title, sectionAbout: pen.line(s.about), drawing: drawingOf(drawings, drawing) }
    }),
  }))
  return {
    sub: 'h3',
    words,
    facility: manual.facility,
    date: manual.date,
    material: words.materials[manual.facility.material] ?? manual.facility.material,
    at: facilityView(manual, pen),
    plan: drawingOf(drawings, 'plan'),
    sectionStraight: drawingOf(drawings, 'section-straight'),
    sectionTurn: drawingOf(drawings, 'section-turn'),
    findings: findingsView(manual, pen),
    front: manual.chapters.filter((c) => c.place === 'front').map((c) => ({ id: c.id, title: c.title, text: pen.block(c.text) })),
    closing: manual.chapters.filter((c) => c.place === 'back').map((c) => ({ id: c.id, title: c.title, text: pen.block(c.text) })),
    sections,
    back: Object.fromEntries(back.map((b) => [b.id, b])),
    backList: back,
    plans: plansView(manual, pen, drawings, 'paper'),
    symptoms: symptomsView(manual, pen),
    reckoners: manual.reckoners.map((r) => reckonerView(r, pen)),
    signals: signalView(pen),
    cautions: [...manual.cautions].sort(bySignal).map((c) => cautionView(c, pen)),
    hazards: hazardsView(manual, pen),
    training: trainingView(manual, pen),
    terms: manual.terms.map((t) => ({ term: t.term, means: pen.line(t.means) })),
    termIndex: manual.termIndex,
    forms: manual.forms.map((f) => pen.line(f.title)),
    worksheets: manual.worksheets.map((w) => worksheetView(w, pen)),
    sources: manual.sources,
  }
}

/**
 * The binder as one HTML document for printing in two passes. Every `data-page-of` slot names an element that some link
 * leads to, so that the printer can find its page; `body-start` marks where arabic numbers begin.
 */
export function renderBinder(manual: Manual, assets: RenderAssets): string {
  const { words } = assets
  const pen = createPen(manual, words, { worksheetHref: (id) => `#worksheet-${id}`, procedureHref: (id) => (manual.procedures.some((p) => p.id === id) ? `#procedure-${id}` : undefined) })
  const back = backParts.filter((id) => id !== 'plans' || manual.plans.length > 0).map((id, i) => ({ id, title: words.binder[id] ?? id, number: manual.sections.length + i + 1 }))
  const pages = namedPages(manual, back, words)
  const foot = `${manual.facility.name} · ${words.binder['revision']} ${manual.facility.revision} · ${manual.date}`
  const style = [assets.fontCss, binderPageRules(manual.facility.paper, foot, pages.front, pages.body), ...pages.body.map((p) => `.${p.name}{page:${p.name}}`), assets.styles['shared'], assets.styles['binder']].join('\n')
  return createTemplates(assets.templates).render('binder/book', { ...bookData(manual, words, pen, renderDrawings(manual, words), back), style: html(style), title: `${manual.facility.name}: ${words.binder['subject']}` })
}
