import type { ManualReckoner } from '../../model/manual/reckoner.ts'
import type { Manual } from '../../model/manual.ts'
import type { RenderAssets } from '../assets.ts'
import { type Drawings, drawingNamed, renderDrawings } from '../drawings/drawings.ts'
import { type Html, html } from '../text/html.ts'
import { createTemplates, type Templates } from '../text/templates.ts'
import { bySignal, cautionView } from '../views/caution-view.ts'
import { createDrawingPrinter, drawingPlace } from '../views/drawing-places.ts'
import { emergencyView } from '../views/emergency-view.ts'
import { facilityView } from '../views/facility-view.ts'
import { findingsView } from '../views/findings-view.ts'
import { hazardsView } from '../views/hazards-view.ts'
import { createPen, type Pen } from '../views/pen.ts'
import { procedureView } from '../views/procedure-view.ts'
import { reckonerView } from '../views/reckoner-view.ts'
import { schedulesView } from '../views/schedules-view.ts'
import { signalView } from '../views/signal-view.ts'
import { symptomsView } from '../views/symptoms-view.ts'
import { trainingView } from '../views/training-view.ts'
import { worksheetView } from '../views/worksheet-view.ts'
import { type BackPart, backPartsOf, dividedParts } from './divided-parts.ts'
import { linkParts } from './link-parts.ts'
import {
  type Hand,
  type NamedPage,
  type PartPages,
  partPageRules,
  type Sides,
} from './page-rules.ts'

/** One part of a binder, printed by itself. */
export type BinderPart = {
  readonly id: string
  readonly pages: PartPages
  /** Leading pages without a number: the divider and, where both sides are printed, its back. */
  readonly unnumbered: number
  /** Style with page rules for a part that begins on this side of a leaf. */
  readonly css: Readonly<Record<Hand, string>>
  /** Empty `data-page-of` slots name the places whose page numbers the printer puts in. */
  readonly body: string
}

export type Binder = {
  readonly parts: readonly BinderPart[]
  readonly sides: Sides
  /** Whether every part begins on a right-hand page, after a blank one where need be. */
  readonly rightHand: boolean
  /** What a blank page says. */
  readonly blank: string
}

/** Everything that the templates of the parts are given. */
function bookData(
  manual: Manual,
  words: RenderAssets['words'],
  pen: Pen,
  drawings: Drawings,
  back: readonly BackPart[],
) {
  const draw = createDrawingPrinter(drawings, 'paper')
  const shown = new Set<string>()
  const cover = drawings.plan?.svg ?? ''
  const [plan, sectionStraight, sectionTurn] = ['plan', 'section-straight', 'section-turn'].map(
    (id) => {
      shown.add(id)
      return draw(id)
    },
  )
  const reckonersAt = back.find((b) => b.id === 'reckoners')?.number
  const reckoner = (r: ManualReckoner) =>
    reckonerView(r, pen, `${reckonersAt}.${manual.reckoners.findIndex((q) => q.id === r.id) + 1}`)
  // A drawing that two procedures share is printed once, where it is met first.
  const once = (id: string | undefined): Html => {
    if (id === undefined || shown.has(id)) return html('')
    shown.add(id)
    return draw(id)
  }
  const sections = manual.sections.map((s) => ({
    ...s,
    about: pen.line(s.about),
    procedures: s.procedures.map((id, i) => {
      const p = manual.procedures.find((q) => q.id === id)
      if (!p) throw new RangeError(`section ${s.id} names ${id}`)
      return {
        ...procedureView(p, pen, (m) => `#${id}-${m}`, once),
        opens: i === 0,
        sectionNumber: s.number,
        sectionTitle: s.title,
        sectionAbout: pen.line(s.about),
        reckoners: p.reckoners.map(reckoner),
      }
    }),
  }))
  const plans = schedulesView(manual, pen, drawings, 'paper', draw)
  for (const id of manual.schedules.flatMap((p) => p.drawings))
    if (drawingNamed(drawings, id)) shown.add(id)
  return {
    sub: 'h3',
    // Who to call stands on a right-hand page, behind the cover.
    coverBack: manual.facility.binder.sides === 2,
    words,
    facility: manual.facility,
    date: manual.date,
    material: words.materials[manual.facility.material],
    at: facilityView(manual, pen),
    emergency: emergencyView(pen, 'paper'),
    cover: html(cover),
    plan,
    sectionStraight,
    sectionTurn,
    findings: findingsView(manual, pen),
    front: manual.chapters
      .filter((c) => c.place === 'front')
      .map((c) => ({ id: c.id, title: c.title, text: pen.block(c.text) })),
    closing: manual.chapters
      .filter((c) => c.place === 'back')
      .map((c) => ({ id: c.id, title: c.title, text: pen.block(c.text) })),
    sections,
    back: Object.fromEntries(back.map((b) => [b.id, b])),
    backList: back,
    plans,
    drawings: Object.entries(drawings)
      .filter(([id]) => shown.has(id))
      .map(([id, d]) => ({ place: drawingPlace(id), title: d.title })),
    symptoms: symptomsView(manual, pen),
    reckoners: manual.reckoners.map(reckoner),
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

type PartPlan = {
  readonly id: string
  readonly number: number | undefined
  readonly named: readonly NamedPage[]
  readonly body: string
}

function planParts(
  manual: Manual,
  words: RenderAssets['words'],
  data: ReturnType<typeof bookData>,
  back: readonly BackPart[],
  templates: Templates,
): PartPlan[] {
  const front: PartPlan = {
    id: 'front',
    number: undefined,
    named: [{ name: 'front', left: manual.facility.name, right: words.binder.subject }],
    body: templates.render('binder/front', data),
  }
  const sections = data.sections.map(
    (s): PartPlan => ({
      id: s.id,
      number: s.number,
      named: s.procedures.map((p) => ({
        name: `p-${p.id}`,
        left: `${s.number}  ${s.title}`,
        right: `${p.number}  ${p.title}`,
      })),
      body: templates.render('binder/section', { ...data, section: s }),
    }),
  )
  const rest = back.map(
    (b): PartPlan => ({
      id: b.id,
      number: b.number,
      named: [{ name: `b-${b.id}`, left: `${b.number}  ${b.title}`, right: '' }],
      body: templates.render(`binder/${b.id}`, data),
    }),
  )
  return [front, ...sections, ...rest]
}

/**
 * The binder in parts: front, one part a section, and the parts behind them. Each is numbered by
 * itself (`3-2`), so that a page more in one moves no number in another, and printed pages can be
 * exchanged one by one.
 * @throws RangeError when something leads to a place that the binder does not have.
 */
export function renderBinder(manual: Manual, assets: RenderAssets): Binder {
  const { words } = assets
  const { sides, sections, dividers } = manual.facility.binder
  const pen = createPen(manual, words, 'paper', {
    worksheetHref: (id) => `#worksheet-${id}`,
    procedureHref: (id) =>
      manual.procedures.some((p) => p.id === id) ? `#procedure-${id}` : undefined,
    procedureNumber: (id) => manual.procedures.find((p) => p.id === id)?.number,
  })
  const blank = words.binder.blank
  const back = backPartsOf(manual, words)
  const divided = new Map(
    dividers === 'leaves' ? dividedParts(manual, words).map((p) => [p.number, p]) : [],
  )
  const templates = createTemplates(assets.templates)
  const foot = `${manual.facility.name} · ${words.binder.revision} ${manual.facility.revision} · ${manual.date}`
  const plans = planParts(
    manual,
    words,
    bookData(manual, words, pen, renderDrawings(manual, words), back),
    back,
    templates,
  )
  const style = [assets.styles['shared'], assets.styles['emergency'], assets.styles['binder']].join(
    '\n',
  )
  const parts = plans.map((p): BinderPart => {
    const pages: PartPages = {
      paper: manual.facility.paper,
      sides,
      foot,
      number: p.number,
      tabs: manual.sections.length + back.length,
      pages: p.named,
      blank,
    }
    const divider = p.number === undefined ? undefined : divided.get(p.number)
    const css = (first: Hand): string =>
      [
        partPageRules(pages, first),
        ...p.named.map((n) => `.${n.name}{page:${n.name}}`),
        style,
      ].join('\n')
    return {
      id: p.id,
      pages,
      unnumbered: divider ? sides : 0,
      css: { right: css('right'), left: css('left') },
      body: divider
        ? `${templates.render('binder/divider', { ...divider, twoSides: sides === 2 })}${p.body}`
        : p.body,
    }
  })
  // A divider is a leaf of its own, so that its part begins on a right-hand page whether asked to
  // or not.
  return {
    parts: linkParts(parts),
    sides,
    rightHand: sides === 2 && (sections === 'right-hand' || dividers !== 'none'),
    blank,
  }
}
