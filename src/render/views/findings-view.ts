import type { Manual } from '../../model/manual.ts'
import type { Pen } from './pen.ts'

const fileName = (where: string): string => where.split('/').at(-1) ?? where

/** Findings, and the list of what nobody has measured with how to measure it. */
export function findingsView(manual: Manual, pen: Pen) {
  const typical = manual.glance.flatMap((g) => g.rows).filter((r) => r.provenance.kind === 'typical')
  return {
    list: manual.findings.map((f) => ({ severity: f.severity, word: pen.words.severities[f.severity] ?? f.severity, title: pen.line(f.title), text: pen.line(f.text), do: pen.line(f.do), where: f.where.map(fileName).join(', ') })),
    measure: typical.map((r) => ({ label: r.label, value: r.text, howTo: r.howTo })),
  }
}
