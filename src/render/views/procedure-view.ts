import type { ManualMethod, ManualProcedure, ManualStep } from '../../model/manual.ts'
import {
  headCautions,
  type ProcedurePart,
  partPlace,
  stepPlace,
} from '../../model/procedure-places.ts'
import { type Html, html } from '../text/html.ts'
import { type CautionView, cautionView } from './caution-view.ts'
import type { DrawingPrinter } from './drawing-places.ts'
import { type FigureView, figureView } from './figure-view.ts'
import type { Pen } from './pen.ts'
import { type ReckonerView, reckonerView } from './reckoner-view.ts'

export type StepView = {
  readonly number: number
  readonly do: Html
  readonly note: Html
  readonly hasNote: boolean
  readonly cautions: readonly CautionView[]
  readonly figures: readonly FigureView[]
}

/** A step with the id that it has in a document. */
type PlacedStep = StepView & { readonly place: string }

type MethodView = {
  readonly id: string
  readonly title: Html
  readonly choose: Html
  readonly hasChoose: boolean
  readonly drawing: Html
  readonly steps: readonly PlacedStep[]
}

export const stepView = (s: ManualStep, pen: Pen): StepView => ({
  number: s.number,
  do: pen.line(s.do),
  note: s.note === undefined ? html('') : pen.line(s.note),
  hasNote: s.note !== undefined,
  cautions: s.cautions.map((c) => cautionView(c, pen)),
  figures: s.figures.map((f) => figureView(f, pen)),
})

/**
 * What to measure is said where it is first met in a method; further on the word "estimate" is
 * enough.
 */
function saidOnce(steps: readonly StepView[]): StepView[] {
  const said = new Set<string>()
  return steps.map((s) => ({
    ...s,
    figures: s.figures.map((f) => {
      const again = said.has(f.measure)
      said.add(f.measure)
      return again ? { ...f, measure: '' } : f
    }),
  }))
}

const methodView = (
  procedure: string,
  m: ManualMethod,
  pen: Pen,
  draw: DrawingPrinter,
): MethodView => ({
  id: m.id,
  title: pen.line(m.title),
  choose: m.choose === undefined ? html('') : pen.line(m.choose),
  hasChoose: m.choose !== undefined,
  drawing: draw(m.drawing),
  steps: saidOnce(m.steps.map((s) => stepView(s, pen))).map((s) => ({
    ...s,
    place: stepPlace(procedure, m.id, s.number),
  })),
})

/** A pair of words: a short head and what it says. */
type Row = { readonly head: string; readonly lines: readonly Html[] }

function gearLines(p: ManualProcedure, pen: Pen): Html[] {
  return p.gear.flatMap((g) => {
    const words = pen.words.capabilities[g.can]
    if (g.machine !== undefined)
      return [
        html(`${pen.line(g.machine)} <span class="soft">(${words}: ${pen.line(g.why)})</span>`),
      ]
    return g.instead === undefined
      ? []
      : [
          html(
            `<span class="soft">${words}: ${pen.words.procedure.instead}</span> ${pen.line(g.instead)}`,
          ),
        ]
  })
}

function timeLines(p: ManualProcedure, pen: Pen): Html[] {
  return p.time.map((t) => {
    const words = t.text === undefined ? '' : pen.line(t.text).toString()
    return html(t.figure === undefined ? words : `${pen.line(`{${t.figure}}`)} ${words}`)
  })
}

function materialLines(p: ManualProcedure, pen: Pen): Html[] {
  return p.materials.map((m) =>
    html(
      m.figure === undefined
        ? pen.line(m.name).toString()
        : `${pen.line(m.name)}: ${pen.line(`{${m.figure}}`)}`,
    ),
  )
}

function factRows(p: ManualProcedure, pen: Pen): Row[] {
  const { words } = pen
  const rows: readonly (readonly [string, readonly Html[]])[] = [
    [words.procedure.when, p.triggers.map(pen.line)],
    [
      words.procedure.who,
      [
        html(
          `${p.who.people} ${p.who.people === 1 ? words.procedure.person : words.procedure.people}. ${pen.line(p.who.roles)}`,
        ),
      ],
    ],
    [words.procedure.authority, [pen.line(p.who.authority)]],
    [words.procedure.time, timeLines(p, pen)],
    [words.procedure.gear, gearLines(p, pen)],
    [words.procedure.tools, p.tools.length === 0 ? [] : [pen.line(p.tools.join(', '))]],
    [words.procedure.material, materialLines(p, pen)],
  ]
  return rows.filter(([, lines]) => lines.length > 0).map(([head, lines]) => ({ head, lines }))
}

/**
 * Where to go from here: a method on the same page, or another procedure with its number where
 * links cannot be touched.
 */
type Lead = { readonly href: string; readonly leads: Html; readonly leadsTo: string }

export type ProcedureView = {
  readonly id: string
  readonly number: string
  /** Ids of the parts in a document that prints the procedure once. */
  readonly places: Readonly<Record<ProcedurePart, string>>
  readonly title: Html
  readonly purpose: Html
  readonly facts: readonly Row[]
  readonly drawing: Html
  readonly notes: readonly Html[]
  readonly measure: readonly { readonly do: Html; readonly how: Html; readonly hasHow: boolean }[]
  readonly branches: readonly ({ readonly found: Html; readonly do: Html } & Lead)[]
  readonly hasBranches: boolean
  readonly cautions: readonly CautionView[]
  readonly methods: readonly MethodView[]
  readonly checks: readonly Html[]
  readonly failures: readonly ({ readonly see: Html; readonly do: Html } & Lead)[]
  readonly stop: readonly Html[]
  readonly records: readonly Html[]
  readonly background: readonly { readonly text: Html; readonly source: string }[]
  readonly reckoners: readonly ReckonerView[]
  readonly next: Lead | false
}

const placesOf = (id: string): ProcedureView['places'] => {
  const at = (part: ProcedurePart): string => partPlace(id, part)
  return {
    head: at('head'),
    measure: at('measure'),
    checks: at('checks'),
    failures: at('failures'),
    stop: at('stop'),
    records: at('records'),
    why: at('why'),
  }
}

/**
 * A procedure as its pages show it.
 * @param methodHref Leads to a method on the same page.
 * @param draw Prints a drawing where it is met first; nothing for one that stands there already.
 */
export function procedureView(
  p: ManualProcedure,
  pen: Pen,
  methodHref: (method: string) => string,
  draw: DrawingPrinter,
): ProcedureView {
  const title = (id: string): string => pen.manual.procedures.find((q) => q.id === id)?.title ?? id
  const leads = (procedure: string | undefined, method?: string): Lead => {
    if (procedure !== undefined)
      return {
        href: pen.context.procedureHref(procedure) ?? '',
        leads: pen.line(title(procedure)),
        leadsTo: pen.context.procedureNumber?.(procedure) ?? '',
      }
    const found = p.methods.find((m) => m.id === method)
    return found
      ? { href: methodHref(found.id), leads: pen.line(found.title), leadsTo: '' }
      : { href: '', leads: html(''), leadsTo: '' }
  }
  return {
    id: p.id,
    number: p.number,
    places: placesOf(p.id),
    title: pen.line(p.title),
    purpose: pen.line(p.purpose),
    facts: factRows(p, pen),
    drawing: draw(p.sheet.drawing),
    notes: p.notes.map(pen.block),
    measure: p.measure.map((m) => ({
      do: pen.line(m.do),
      how: m.how === undefined ? html('') : pen.line(m.how),
      hasHow: m.how !== undefined,
    })),
    branches: p.branches.map((b) => ({
      found: pen.line(b.found),
      do: pen.line(b.do),
      ...leads(b.procedure, b.method),
    })),
    hasBranches: p.branches.length > 0,
    cautions: headCautions(p).map((c) => cautionView(c, pen)),
    methods: p.methods.map((m) => methodView(p.id, m, pen, draw)),
    checks: p.checks.map(pen.line),
    failures: p.failures.map((f) => ({
      see: pen.line(f.see),
      do: pen.line(f.do),
      ...leads(f.procedure),
    })),
    stop: p.stop.map(pen.line),
    records: p.records.map(pen.line),
    background: p.background.map((b) => ({
      text: pen.line(b.text),
      source: pen.manual.sources.find((s) => s.id === b.source)?.text ?? b.source,
    })),
    reckoners: p.reckoners.map((r) => reckonerView(r, pen)),
    next: p.next === undefined ? false : leads(p.next),
  }
}
