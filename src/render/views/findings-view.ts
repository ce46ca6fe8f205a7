import type { Manual } from '../../model/manual.ts'
import { fill } from '../../model/pattern.ts'
import { html } from '../text/html.ts'
import { quantityHtml } from '../text/number-html.ts'
import type { Pen } from './pen.ts'
import { tableView } from './schedules-view.ts'

const fileName = (where: string): string => where.split('/').at(-1) ?? where

/** What the board is asked for, findings, and the list of what nobody has measured with how to measure it. */
export function findingsView(manual: Manual, pen: Pen) {
  return {
    board: manual.board.map((plan) => ({
      title: plan.title,
      about: pen.block(plan.about),
      tables: plan.tables.map((t) => tableView(t, pen)),
    })),
    list: manual.findings.map((f) => ({
      id: f.id,
      severity: f.severity,
      word: pen.words.severities[f.severity],
      title: pen.line(f.title),
      text: pen.line(f.text),
      do: pen.line(f.do),
      guesses:
        f.guesses.length === 0
          ? ''
          : fill(pen.words.findings.guesses, {
              what: f.guesses.map(({ label, text }) => `${label} ${text}`).join('; '),
            }),
      where: f.where.map(fileName).join(', '),
    })),
    measure: manual.toMeasure.map((m) => ({ ...m, value: html(quantityHtml(m.text)) })),
  }
}
