import type { ManualMethod, ManualProcedure, ManualStep } from '../../model/manual/procedure.ts'
import { namesIn } from '../../model/placeholders.ts'
import { stepPlace } from '../../model/procedure-places.ts'
import { wayLetter } from '../../model/way-letter.ts'
import { type Html, html } from '../text/html.ts'
import { type CautionView, cautionView } from './caution-view.ts'
import type { DrawingCiter, DrawingPrinter } from './drawing-places.ts'
import { type FigureView, figureView } from './figure-view.ts'
import type { Pen } from './pen.ts'

/** A figure of a step; one that its sentence says already needs no label. */
type StepFigure = FigureView & { readonly said: boolean }

export type StepView = {
  readonly number: number
  readonly do: Html
  readonly note: Html
  readonly hasNote: boolean
  readonly cautions: readonly CautionView[]
  readonly figures: readonly StepFigure[]
}

/** A step with the id that it has in a document. */
type PlacedStep = StepView & { readonly place: string }

export type MethodView = {
  readonly id: string
  /** Empty where there is no choice. */
  readonly letter: string
  readonly title: Html
  readonly choose: Html
  readonly hasChoose: boolean
  readonly drawings: readonly Html[]
  readonly steps: readonly PlacedStep[]
}

/** What is done, with the drawing that shows it. */
function doing(s: ManualStep, pen: Pen, cite: DrawingCiter): Html {
  const cites = cite(s.drawing).toString()
  return cites === '' ? pen.line(s.do) : html(`${pen.line(s.do)} ${cites}`)
}

export const stepView = (s: ManualStep, pen: Pen, cite: DrawingCiter): StepView => ({
  number: s.number,
  do: doing(s, pen, cite),
  note: s.note === undefined ? html('') : pen.line(s.note),
  hasNote: s.note !== undefined,
  cautions: s.cautions.map((c) => cautionView(c, pen)),
  figures: s.figures.map((f) => ({ ...figureView(f, pen), said: namesIn(s.do).includes(f) })),
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

/** How drawings are printed and cited in one procedure. */
export type DrawingsHere = { readonly draw: DrawingPrinter; readonly cite: DrawingCiter }

/** Every way of a procedure, with its letter where there are several. */
export const methodViews = (
  { id, methods }: Pick<ManualProcedure, 'id' | 'methods'>,
  pen: Pen,
  drawings: DrawingsHere,
): readonly MethodView[] =>
  methods.map((m, i) => ({
    ...methodView(id, m, pen, drawings),
    letter: wayLetter(i, methods.length) ?? '',
  }))

const methodView = (
  procedure: string,
  m: ManualMethod,
  pen: Pen,
  { draw, cite }: DrawingsHere,
): Omit<MethodView, 'letter'> => ({
  id: m.id,
  title: pen.line(m.title),
  choose: m.choose === undefined ? html('') : pen.line(m.choose),
  hasChoose: m.choose !== undefined,
  drawings: m.steps.map((s) => draw(s.drawing)).filter((d) => d.toString() !== ''),
  steps: saidOnce(m.steps.map((s) => stepView(s, pen, cite))).map((s) => ({
    ...s,
    place: stepPlace(procedure, m.id, s.number),
  })),
})
