import { generate } from 'lean-qr'
import { toSvgSource } from 'lean-qr/extras/svg'
import type { ManualCaution } from '../../model/manual/caution.ts'
import type { ManualProcedure, ManualSheet, SheetGroup } from '../../model/manual/procedure.ts'
import type { Manual } from '../../model/manual.ts'
import type { SheetPaper } from '../../model/papers.ts'
import { fill } from '../../model/pattern.ts'
import { emergencySheet } from '../../model/sheet-names.ts'
import { type RenderAssets, stylesOf } from '../assets.ts'
import type { Drawing } from '../drawings/drawing.ts'
import { drawingFigure } from '../drawings/drawing-figure.ts'
import { type Drawings, drawingNamed, renderDrawings } from '../drawings/drawings.ts'
import { escapeHtml } from '../text/escape-html.ts'
import { type Html, html } from '../text/html.ts'
import { createTemplates } from '../text/templates.ts'
import { cautionBox } from '../views/caution-box.ts'
import { cautionView } from '../views/caution-view.ts'
import { citeBeside, type DrawingCiter } from '../views/drawing-places.ts'
import { emergencyView } from '../views/emergency-view.ts'
import { figureView } from '../views/figure-view.ts'
import { createPen, type Pen } from '../views/pen.ts'
import { reckonerView } from '../views/reckoner-view.ts'
import { stepView } from '../views/step-view.ts'
import { sheetLayouts } from './sheet-pages.ts'
import { sheetPaperCss } from './sheet-papers.ts'

export type Sheet = {
  readonly id: string
  readonly title: string
  /** The pages of all its layouts, most of which several have. */
  readonly pages: readonly string[]
  /** The ways in which it may be parted over pages, the best first, each as places in `pages`. */
  readonly layouts: readonly { readonly name: string; readonly pages: readonly number[] }[]
  /** Its drawing in the sizes that layouts ask for by `data-drawing`, once for all of them. */
  readonly drawings: readonly { readonly size: DrawingSize; readonly body: string }[]
}

/** In a column beside the steps, or across the page. */
type DrawingSize = 'beside' | 'below'

export type Sheets = {
  /** Style by paper, in the facility's order. */
  readonly papers: readonly { readonly name: SheetPaper; readonly css: string }[]
  /** Each is rendered when it is asked for: the browser prints others meanwhile. */
  readonly sheets: readonly (() => Sheet)[]
}

type Render = (name: string, data: object) => string

/** What all sheets are made with. */
type SheetMaker = {
  readonly manual: Manual
  readonly assets: RenderAssets
  readonly pen: Pen
  readonly render: Render
}

/** A code that opens the procedure's page on a phone; only where the site has an address. */
function qrCode(manual: Manual, id: string, label: string): Html {
  const { siteAddress } = manual.facility
  if (siteAddress === undefined) return html('')
  const svg = toSvgSource(generate(`${siteAddress}/procedures/${id}.html`), { on: 'black', pad: 0 })
  return html(
    `<div class="qr" role="img" aria-label="${escapeHtml(label)}">${svg.replace(/^<\?xml[^>]*\?>/, '')}</div>`,
  )
}

/** A warning of a step in one line: what to do about it. */
const inLine = (c: ManualCaution, pen: Pen) => {
  const { signal, word, avoid } = cautionView(c, pen)
  return { signal, word, avoid }
}

const groupView = (group: SheetGroup, pen: Pen, cite: DrawingCiter) => ({
  letter: group.letter ?? '',
  title: group.title === undefined ? html('') : pen.line(group.title),
  hasTitle: group.title !== undefined,
  start: group.steps[0]?.number ?? 1,
  steps: group.steps.map((step) => ({
    ...stepView({ ...step, cautions: [] }, pen, cite),
    minds: step.cautions.map((c) => inLine(c, pen)),
  })),
})

/** What is found, with the letter or the number of the procedure that it leads to. */
const lookView = (s: ManualSheet, manual: Manual, pen: Pen) =>
  s.look.map((b) => ({
    found: pen.line(b.found),
    do: pen.line(b.do),
    letter: b.letter ?? '',
    number: manual.procedures.find((q) => q.id === b.procedure)?.number ?? '',
  }))

/** Where a layout has the drawing. */
const slotFor = (size: DrawingSize): Html => html(`<i data-drawing="${size}"></i>`)

const drawingsOf = (drawing: Drawing): Sheet['drawings'] => [
  { size: 'beside', body: drawingFigure(drawing, 'side').toString() },
  { size: 'below', body: drawingFigure(drawing, 'paper').toString() },
]

/** Groups of steps, written once for all layouts that have them: most layouts part the same ones. */
function groupWriter(
  pen: Pen,
  render: Render,
): (group: SheetGroup, cite: DrawingCiter, isDrawn: boolean) => Html {
  const written = new Map<string, Html>()
  return (group, cite, isDrawn) => {
    const key = JSON.stringify([group, isDrawn])
    const known = written.get(key)
    if (known) return known
    const body = html(render('sheet/group', groupView(group, pen, cite)).trimEnd())
    written.set(key, body)
    return body
  }
}

function sheetData({ manual, pen, render }: SheetMaker, p: ManualProcedure, drawings: Drawings) {
  const s = p.sheet
  const drawing = drawingNamed(drawings, s.drawing)
  const qr = qrCode(manual, p.id, pen.words.sheet.scan)
  const look = lookView(s, manual, pen)
  const emergency = emergencyView(pen, 'paper')
  const write = groupWriter(pen, render)
  const layouts = sheetLayouts(s).map(({ name, pages }) => {
    const isDrawn = pages.some((page) => page.drawn)
    const cite = citeBeside(drawings, isDrawn ? s.drawing : undefined)
    const views = pages.map((page, i) => ({
      ...page,
      isBeside: page.side || page.drawn === 'beside',
      isAlone: page.drawn === 'alone',
      isAcross: page.drawn === 'across',
      isSmall: page.drawn === 'beside' || page.drawn === 'foot',
      part:
        pages.length === 1
          ? ''
          : fill(pen.words.sheet.part, { number: String(i + 1), of: String(pages.length) }),
      first: i === 0,
      look: page.look ? look : [],
      calls: page.head && s.calls.length > 0,
      groups: page.groups.map((g) => write(g, cite, isDrawn)),
      hasSteps: page.groups.length > 0,
    }))
    return { name, pages: views }
  })
  return {
    id: p.id,
    number: p.number,
    title: pen.line(p.title),
    when: pen.line(s.when),
    // In an emergency nobody looks for tools first.
    bring: s.calls.length > 0 || p.tools.length === 0 ? '' : pen.line(p.tools.join(', ')),
    box: cautionBox(p, pen),
    figures: s.calls.length > 0 ? [] : s.figures.map((f) => figureView(f.name, pen, f.label)),
    layouts,
    drawings: drawing ? drawingsOf(drawing) : [],
    beside: drawing ? slotFor('beside') : html(''),
    below: drawing ? slotFor('below') : html(''),
    done: s.done.map(pen.line),
    stop: s.stop.map(pen.line),
    hasReckoner: s.reckoner !== undefined,
    reckoner: s.reckoner ? reckonerView(s.reckoner, pen) : undefined,
    worksheets: s.worksheets.join(', '),
    next: manual.procedures.find((q) => q.id === p.next)?.title ?? '',
    emergency,
    callees: emergency.contacts.filter((c) => s.calls.includes(c.roleId)),
    // First aid is no help against fire, nor an extinguisher for a loose horse.
    kept: emergency.kept.filter((k) => s.calls.includes(k.role)),
    callsAmbulance: s.calls.includes('ambulance'),
    qr,
    hasQr: qr.toString() !== '',
  }
}

/** Layouts with each of their pages once, however many of them have it. */
function inPages<P>(
  layouts: readonly { readonly name: string; readonly pages: readonly P[] }[],
  write: (page: P) => string,
): Pick<Sheet, 'pages' | 'layouts'> {
  const places = new Map<string, number>()
  const placeOf = (page: P): number => {
    const body = write(page).trimEnd()
    const place = places.get(body) ?? places.size
    places.set(body, place)
    return place
  }
  const placed = layouts.map(({ name, pages }) => ({ name, pages: pages.map(placeOf) }))
  return { pages: [...places.keys()], layouts: placed }
}

/** What to do and whom to call: on one page where that can be read, else on two. */
function emergencyLayouts({ sheet }: RenderAssets['words']) {
  const part = (number: string): string => fill(sheet.part, { number, of: '2' })
  return [
    { name: 'whole', pages: [{ call: true, who: true, part: '' }] },
    {
      name: 'parted',
      pages: [
        { call: true, who: false, part: part('1') },
        { call: false, who: true, part: part('2') },
      ],
    },
  ]
}

function emergencySheetOf({ manual, assets, pen, render }: SheetMaker): Sheet {
  const emergency = emergencyView(pen, 'paper')
  return {
    id: emergencySheet,
    title: `${assets.words.emergency.title}: ${manual.facility.name}`,
    drawings: [],
    ...inPages(emergencyLayouts(assets.words), (page) =>
      render('sheet/emergency', { pages: [page], emergency }),
    ),
  }
}

function procedureSheet(maker: SheetMaker, p: ManualProcedure): Sheet {
  const { manual, assets, render } = maker
  const drawings = renderDrawings(manual, assets.words)
  const { layouts, ...sheet } = sheetData(maker, p, drawings)
  return {
    id: p.id,
    title: `${p.title}: ${manual.facility.name}`,
    drawings: sheet.drawings,
    ...inPages(layouts, (page) => render('sheet/sheet', { sheet: { ...sheet, pages: [page] } })),
  }
}

/**
 * All posted sheets, that of the emergency first, in every layout that they may have; the printer
 * takes the first in which the steps are large enough to be read from where people stand, finds the
 * largest type (`--fs`) at which nothing overflows, and fills in how far it can be read.
 * The class `black` on the body spares ink.
 */
export function renderSheets(manual: Manual, assets: RenderAssets): Sheets {
  const pen = createPen(manual, assets.words, 'paper', {
    worksheetHref: () => undefined,
    procedureHref: () => undefined,
  })
  const templates = createTemplates(assets.templates)
  const common = {
    words: assets.words,
    facility: manual.facility,
    date: manual.date,
    material: assets.words.materials[manual.facility.material],
  }
  const render: Render = (name, data) => templates.render(name, { ...common, ...data })
  const maker = { manual, assets, pen, render }
  const style = stylesOf(assets, 'shared', 'emergency', 'sheet', 'sheet-work', 'black')
  return {
    papers: manual.facility.sheetPapers.map((name) => ({
      name,
      css: `${sheetPaperCss(name)}\n${style}`,
    })),
    sheets: [
      () => emergencySheetOf(maker),
      ...manual.procedures.map((p) => () => procedureSheet(maker, p)),
    ],
  }
}
