import type { ManualCaution } from '../../model/manual/caution.ts'
import { bySignal } from '../../model/manual/caution.ts'
import type { ManualProcedure } from '../../model/manual/procedure.ts'
import type { Manual } from '../../model/manual.ts'
import type { Html } from '../text/html.ts'
import type { Pen } from './pen.ts'

type HazardRow = {
  readonly where: string
  readonly signal: string
  readonly word: string
  readonly hazard: Html
  readonly avoid: Html
  readonly sources: string
}

/** Where in a procedure each of its cautions stands: the whole work, or steps by method. */
function placesOf(
  p: ManualProcedure,
  whole: string,
): ReadonlyMap<string, { readonly caution: ManualCaution; readonly where: string }> {
  const found = new Map<string, { caution: ManualCaution; where: string[] }>()
  const add = (caution: ManualCaution, where: string): void => {
    const entry = found.get(caution.id) ?? { caution, where: [] }
    entry.where.push(where)
    found.set(caution.id, entry)
  }
  for (const c of p.cautions) add(c, whole)
  for (const m of p.methods)
    for (const s of m.steps)
      for (const c of s.cautions)
        add(c, p.methods.length > 1 ? `${m.title}: ${s.number}` : String(s.number))
  return new Map(
    [...found].map(([id, { caution, where }]) => [id, { caution, where: where.join(', ') }]),
  )
}

/**
 * A table of hazards for each procedure: where, what, how it is avoided, and the law or practice
 * behind it.
 */
export function hazardsView(
  manual: Manual,
  pen: Pen,
): readonly {
  readonly id: string
  readonly title: string /** As printed in the binder; empty elsewhere. */
  readonly number: string
  readonly href: string
  readonly rows: readonly HazardRow[]
}[] {
  const source = (id: string): string => manual.sources.find((s) => s.id === id)?.short ?? id
  return manual.procedures.map((p) => ({
    id: p.id,
    title: p.title,
    number: pen.context.procedureNumber?.(p.id) ?? '',
    href: pen.context.procedureHref(p.id) ?? '',
    rows: [...placesOf(p, pen.words.safety.whole).values()]
      .sort((a, b) => bySignal(a.caution, b.caution))
      .map(({ caution, where }) => ({
        where,
        signal: caution.signal,
        word: pen.words.signals[caution.signal],
        hazard: pen.line(caution.hazard),
        avoid: pen.line(caution.avoid),
        sources: caution.sources.map(source).join('; '),
      })),
  }))
}
