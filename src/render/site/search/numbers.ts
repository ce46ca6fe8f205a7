import type { Worksheet } from '../../../model/figure.ts'
import type { FindablesOf } from './entry.ts'

/** Each figure with its value, as a line that answers by itself. */
const figureLines = ({ outputs }: Worksheet): readonly string[] =>
  outputs.map(({ label, value }) => (value.ok ? `${label}: ${value.text}` : label))

export const worksheets: FindablesOf = ({ manual }) =>
  manual.worksheets.map((w) => ({
    kind: 'worksheet',
    href: `worksheets/${w.id}.html`,
    title: `${w.number} ${w.title}`,
    lines: figureLines(w),
    text: [w.about],
  }))

export const reckoners: FindablesOf = ({ manual, pen }) =>
  manual.reckoners.map((r) => ({
    kind: 'reckoner',
    href: `reckoners.html#${r.id}`,
    title: pen.plain(r.title),
    lines: [pen.plain(r.about)],
    text: [],
  }))

export const findings: FindablesOf = ({ manual, pen }) =>
  manual.findings.map((f) => ({
    kind: 'finding',
    href: `findings.html#${f.id}`,
    title: pen.plain(f.title),
    lines: [pen.plain(f.text), pen.plain(f.do)],
    text: [],
  }))
