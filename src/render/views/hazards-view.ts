import { bySignal } from '../../model/manual/caution.ts'
import type { Manual } from '../../model/manual.ts'
import { type Html, html } from '../text/html.ts'
import { type CautionView, cautionView } from './caution-view.ts'
import type { Pen } from './pen.ts'

type HazardView = CautionView & {
  readonly id: string
  readonly more: Html
  readonly procedures: readonly {
    readonly title: string
    /** As printed in the binder; empty elsewhere. */
    readonly number: string
    readonly href: string
  }[]
  readonly sources: string
}

/** Every hazard once, the worst first, with the procedures that it belongs to. */
export function hazardsView(manual: Manual, pen: Pen): readonly HazardView[] {
  const source = (id: string): string => manual.sources.find((s) => s.id === id)?.short ?? id
  const withHazard = (id: string) =>
    manual.procedures.filter((p) =>
      [...p.cautions, ...p.methods.flatMap((m) => m.steps.flatMap((s) => s.cautions))].some(
        (c) => c.id === id,
      ),
    )
  return [...manual.cautions].sort(bySignal).map((c) => ({
    ...cautionView(c, pen),
    id: c.id,
    more: c.more === undefined ? html('') : pen.line(c.more),
    procedures: withHazard(c.id).map((p) => ({
      title: p.title,
      number: pen.context.procedureNumber?.(p.id) ?? '',
      href: pen.context.procedureHref(p.id) ?? '',
    })),
    sources: c.sources.map(source).join('; '),
  }))
}
