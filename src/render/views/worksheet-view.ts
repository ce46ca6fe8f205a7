import { type FigureInput, isEstimated, type Worksheet } from '../../model/figure.ts'
import { fill } from '../../model/pattern.ts'
import type { Rounded } from '../../model/quantity/format-quantity.ts'
import { formulaHtml, formulaTemplates } from '../text/formula.ts'
import { type Html, html } from '../text/html.ts'
import { quantityHtml } from '../text/number-html.ts'
import type { Pen } from './pen.ts'
import { provenanceWords } from './provenance-words.ts'

type InputView = {
  readonly symbol: Html
  readonly value: Html
  readonly label: string
  readonly origin: string
  readonly href: string
  readonly howTo: string
  readonly typical: boolean
  readonly name: string
  /** The fact itself, where it changes from day to day. */
  readonly fact: string
}

type OutputView = {
  readonly id: string
  readonly label: string
  readonly formula: Html
  readonly numbers: Html
  /** Templates for the same with other numbers, where a page can work them out anew. */
  readonly places: Html
  readonly live: string
  readonly hasNumbers: boolean
  readonly known: boolean
  readonly value: Html
  readonly reason: string
  readonly rounding: string
  readonly estimate: boolean
}

export type WorksheetView = {
  readonly id: string
  /** Its id, where a page can work any of its numbers out anew. */
  readonly live: string
  readonly number: string
  readonly title: string
  readonly about: string
  readonly inputs: readonly InputView[]
  readonly outputs: readonly OutputView[]
  readonly sources: readonly string[]
}

/** The worksheet that an input comes from, where it is another's figure. */
export function worksheetBehind({ provenance }: FigureInput, pen: Pen): Worksheet | undefined {
  const derivedFrom = provenance.kind === 'derived' ? provenance.figure : ''
  const useId = derivedFrom.slice(0, derivedFrom.lastIndexOf('.'))
  return pen.manual.worksheets.find((w) => w.id === useId)
}

function inputView(i: FigureInput, pen: Pen): InputView {
  const worksheet = worksheetBehind(i, pen)
  return {
    symbol: formulaHtml(i.symbol, i.label),
    value: html(quantityHtml(i.text)),
    label: i.label,
    origin: worksheet
      ? `${pen.words.provenance.derived}, ${worksheet.number}`
      : provenanceWords(i.provenance, pen),
    href: (worksheet && pen.context.worksheetHref(worksheet.id)) ?? '',
    howTo: isEstimated(i.provenance) ? i.howTo : '',
    typical: isEstimated(i.provenance),
    name: i.name,
    fact: pen.context.live?.has(i.from) && i.provenance.kind !== 'derived' ? i.from : '',
  }
}

function roundingWords({ mode, step }: Rounded, { words }: Pen): string {
  const patterns = {
    up: words.worksheet.roundedUp,
    down: words.worksheet.roundedDown,
    nearest: words.worksheet.roundedToNearest,
  }
  return fill(patterns[mode], { step })
}

/** A worksheet with its formulas set; each formula is also given in words for those who listen. */
export function worksheetView(w: Worksheet, pen: Pen): WorksheetView {
  const cited = pen.manual.sources.filter((s) => w.sources.includes(s.id))
  return {
    id: w.id,
    live: w.outputs.some((o) => pen.context.live?.has(o.id)) ? w.id : '',
    number: w.number,
    title: w.title,
    about: w.about,
    inputs: w.inputs.map((i) => inputView(i, pen)),
    outputs: w.outputs.map((o) => {
      const f = w.formulas.find((line) => line.figure === o.id)
      const numbers = f?.numbers ?? ''
      return {
        id: o.id,
        live: pen.context.live?.has(o.id) ? o.id : '',
        places: pen.context.live?.has(o.id) && f ? formulaTemplates(f.places, f.symbols) : html(''),
        label: o.label,
        formula: formulaHtml(f?.tex ?? '', `${pen.words.worksheet.formula}: ${o.label}`),
        numbers:
          numbers === ''
            ? html('')
            : formulaHtml(
                numbers,
                `${pen.words.worksheet.numbers}: ${o.label}, ${o.value.ok ? o.value.text : ''}`,
              ),
        hasNumbers: numbers !== '',
        known: o.value.ok,
        value: html(o.value.ok ? quantityHtml(o.value.text) : ''),
        reason: o.value.ok ? '' : o.value.reason,
        rounding: o.value.ok ? roundingWords(o.value.rounding, pen) : '',
        estimate: o.estimate,
      }
    }),
    sources: cited.map((s) => s.text),
  }
}
