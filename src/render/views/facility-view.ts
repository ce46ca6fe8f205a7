import { isEstimated } from '../../model/figure.ts'
import type { GlanceRow } from '../../model/manual/facility.ts'
import type { Manual } from '../../model/manual.ts'
import { type Html, html } from '../text/html.ts'
import { quantityHtml } from '../text/number-html.ts'
import type { Pen } from './pen.ts'
import { provenanceWords } from './provenance-words.ts'
import { telephone } from './telephone.ts'

type FactRow = {
  readonly label: string
  readonly value: Html
  readonly origin: string
  readonly howTo: string
  readonly typical: boolean
}

const row = (r: GlanceRow, pen: Pen): FactRow => ({
  label: r.label,
  value: html(quantityHtml(r.text)),
  origin: provenanceWords(r.provenance, pen),
  howTo: isEstimated(r.provenance) ? r.howTo : '',
  typical: isEstimated(r.provenance),
})

/** The facts of the facility for its own page. */
export function facilityView(manual: Manual, pen: Pen) {
  return {
    groups: manual.glance.map((g, i) => ({
      id: `facts-${i + 1}`,
      title: g.title,
      rows: g.rows.map((r) => row(r, pen)),
    })),
    machines: manual.machines.map((m) => ({
      name: m.name,
      from: m.from,
      can: m.can.map((c) => pen.words.capabilities[c]),
      rows: m.facts.map((r) => ({ label: r.label, value: html(quantityHtml(r.text)) })),
    })),
    contacts: manual.contacts.map((c) => ({ ...c, href: telephone(c.phone) })),
    raceDays: manual.raceDays,
  }
}
