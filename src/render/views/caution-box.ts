import { worstOf } from '../../model/manual/caution.ts'
import type { ManualProcedure } from '../../model/manual/procedure.ts'
import { type Html, html } from '../text/html.ts'
import { type CautionView, cautionView } from './caution-view.ts'
import type { Pen } from './pen.ts'

/** The one box at the head of a procedure: its signal word is the worst of its lines. */
export type CautionBox = {
  readonly signal: string
  readonly word: string
  readonly alert: Html
  readonly title: string
  /** Each says its own signal word only where it is another than that of the head. */
  readonly lines: readonly (CautionView & { readonly other: boolean })[]
}

export function cautionBox(p: Pick<ManualProcedure, 'cautions' | 'before'>, pen: Pen): CautionBox {
  const worst = worstOf(p.cautions)
  const { signal, word, alert } = worst
    ? cautionView(worst, pen)
    : { signal: 'notice', word: pen.words.signals.notice, alert: html('') }
  const lines = p.cautions.map((c) => {
    const line = cautionView(c, pen)
    return { ...line, other: line.signal !== signal }
  })
  return { signal, word, alert, title: pen.words.before[p.before], lines }
}
