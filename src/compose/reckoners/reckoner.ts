import type { Engine } from '../../compute/engine/engine.ts'
import { factPathOf, figureIdOf } from '../../compute/uses/ids.ts'
import { useIdOf } from '../../compute/uses/use.ts'
import { type FactPath, kindOfFact } from '../../model/fact-spec.ts'
import type { ManualReckoner } from '../../model/manual/reckoner.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import type { Reckoner } from '../../validate/schemas/library.ts'
import { type Asked, type Axis, axisOf, cellsOf } from './cells.ts'

/** An axis of a table: its values in SI with their heads. */
export function reckonerAxis(
  spec: Reckoner['rows'],
  engine: Engine,
  locale: Locale,
): Axis & { readonly fact: FactPath } {
  const fact = factPathOf(spec.fact)
  const kind = kindOfFact(fact)
  if (!kind) throw new RangeError(`no fact ${fact}`)
  return { ...axisOf(spec, kind, engine as unknown as Asked, locale), fact }
}

/**
 * Works out a ready reckoner: the same calculation as the figure's own, over other values of its
 * inputs.
 */
export function composeReckoner(
  spec: Reckoner,
  engine: Engine,
  locale: Locale,
): ManualReckoner | undefined {
  const main = engine.figure(figureIdOf(spec.figure))
  const rows = reckonerAxis(spec.rows, engine, locale)
  const columns = spec.columns && reckonerAxis(spec.columns, engine, locale)
  // Without its figure the table has nothing to say here; its inputs are the reader's to suppose.
  if (!main) return undefined
  const own = [{ figure: spec.figure, to: spec.to, label: main.many }]
  const figures = columns ? own : (spec.figures ?? own)
  for (const f of figures) figureIdOf(f.figure)
  return {
    id: spec.id,
    title: spec.title,
    about: spec.about,
    rowHead: spec.rows.label ?? engine.facts.get(rows.fact)?.label ?? '',
    columnHeads: columns ? columns.values.map((v) => v.head) : figures.map((f) => f.label),
    columnsHead: columns && (spec.columns?.label ?? engine.facts.get(columns.fact)?.label),
    rows: rows.values.map(({ si, head, own }) => ({
      head,
      own,
      cells: cellsOf([rows.fact, si], columns, figures, engine as unknown as Asked),
    })),
    worksheet: { number: main.worksheet, id: useIdOf(spec.figure) },
    // The varied inputs are given by the reader, so only what else is typical makes the table an
    // estimate.
    estimate: main.toMeasure.some((path) => path !== rows.fact && path !== columns?.fact),
  }
}
