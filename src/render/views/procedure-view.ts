import type { ManualProcedure } from '../../model/manual/procedure.ts'
import { type ProcedurePart, partPlace } from '../../model/procedure-places.ts'
import { wayLetter } from '../../model/way-letter.ts'
import { type Html, html } from '../text/html.ts'
import { type CautionBox, cautionBox } from './caution-box.ts'
import type { Pen } from './pen.ts'
import { type FactRow, factRows } from './procedure-facts.ts'
import { type ReckonerView, reckonerView } from './reckoner-view.ts'
import { type DrawingsHere, type MethodView, methodViews } from './step-view.ts'

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
  readonly facts: readonly FactRow[]
  readonly drawing: Html
  readonly notes: readonly Html[]
  readonly measure: readonly { readonly do: Html; readonly how: Html; readonly hasHow: boolean }[]
  readonly branches: readonly ({
    readonly found: Html
    readonly do: Html
    /** Of the way that it leads to, where there are several. */
    readonly letter: string
  } & Lead)[]
  readonly hasBranches: boolean
  readonly box: CautionBox
  readonly methods: readonly MethodView[]
  readonly checks: readonly Html[]
  readonly failures: readonly ({ readonly see: Html; readonly do: Html } & Lead)[]
  readonly stop: readonly Html[]
  readonly records: readonly Html[]
  readonly background: readonly {
    readonly text: Html
    readonly source: string
    /** The sign that stands for a source which is told once, in front. */
    readonly mark: string | undefined
  }[]
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

/** Leads from a procedure to its methods and to others. */
function leader(p: ManualProcedure, pen: Pen, methodHref: (method: string) => string) {
  const nowhere: Lead = { href: '', leads: html(''), leadsTo: '' }
  return {
    toProcedure: (id: string): Lead => ({
      href: pen.context.procedureHref(id) ?? '',
      leads: pen.line(pen.manual.procedures.find((q) => q.id === id)?.title ?? id),
      leadsTo: pen.context.procedureNumber?.(id) ?? '',
    }),
    toMethod: (id: string | undefined): Lead => {
      const method = p.methods.find((m) => m.id === id)
      return method
        ? { href: methodHref(method.id), leads: pen.line(method.title), leadsTo: '' }
        : nowhere
    },
    nowhere,
  }
}

/** What leads into and out of the work: what was found, and what is done where it went wrong. */
function tables(p: ManualProcedure, pen: Pen, methodHref: (method: string) => string) {
  const { toProcedure, toMethod, nowhere } = leader(p, pen, methodHref)
  return {
    branches: p.branches.map((b) => ({
      found: pen.line(b.found),
      do: pen.line(b.do),
      letter:
        wayLetter(
          p.methods.findIndex((m) => m.id === b.method),
          p.methods.length,
        ) ?? '',
      ...(b.procedure === undefined ? toMethod(b.method) : toProcedure(b.procedure)),
    })),
    hasBranches: p.branches.length > 0,
    failures: p.failures.map((f) => ({
      see: pen.line(f.see),
      do: pen.line(f.do),
      ...(f.procedure === undefined ? nowhere : toProcedure(f.procedure)),
    })),
    next: p.next === undefined ? (false as const) : toProcedure(p.next),
  }
}

const measureView = (
  p: ManualProcedure,
  pen: Pen,
  cite: DrawingsHere['cite'],
): ProcedureView['measure'] =>
  p.measure.map((m) => ({
    do: html(`${pen.line(m.do)} ${cite(m.drawing)}`.trimEnd()),
    how: m.how === undefined ? html('') : pen.line(m.how),
    hasHow: m.how !== undefined,
  }))

/**
 * A procedure as its pages show it.
 * @param methodHref Leads to a method on the same page.
 * @param drawings Its printer gives nothing for a drawing that stands there already, or elsewhere.
 */
export const procedureView = (
  p: ManualProcedure,
  pen: Pen,
  methodHref: (method: string) => string,
  drawings: DrawingsHere,
): ProcedureView => ({
  id: p.id,
  number: p.number,
  places: placesOf(p.id),
  title: pen.line(p.title),
  purpose: pen.line(p.purpose),
  facts: factRows(p, pen),
  drawing: drawings.draw(p.sheet.drawing),
  notes: p.notes.map(pen.block),
  measure: measureView(p, pen, drawings.cite),
  ...tables(p, pen, methodHref),
  box: cautionBox(p, pen),
  methods: methodViews(p, pen, drawings),
  checks: p.checks.map(pen.line),
  stop: p.stop.map(pen.line),
  records: p.records.map(pen.line),
  background: p.background.map((b) => ({
    text: pen.line(b.text),
    source: pen.manual.sources.find((s) => s.id === b.source)?.text ?? b.source,
    mark: b.source === 'common-practice' ? pen.words.sources.commonPracticeMark : undefined,
  })),
  reckoners: p.reckoners.map((r) => reckonerView(r, pen)),
})
