import type { Engine } from '../../compute/engine/engine.ts'
import { factPathOf, figureIdOf } from '../../compute/uses/ids.ts'
import { useIdOf } from '../../compute/uses/use.ts'
import { type FactPath, factSpec } from '../../model/fact-spec.ts'
import type { ManualReckoner } from '../../model/manual/reckoner.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import { parseQuantity } from '../../model/quantity/parse-quantity.ts'
import type { Reckoner } from '../../validate/schemas/library.ts'

/** Rows that are kept of a list that goes up to a fact of this facility. */
const mostRows = 6

type Axis = {
  readonly fact: FactPath
  readonly values: readonly { readonly si: number; readonly head: string; readonly own: boolean }[]
}

/** An axis of a table: its values in SI with their heads. */
export function reckonerAxis(spec: Reckoner['rows'], engine: Engine, locale: Locale): Axis {
  const fact = factPathOf(spec.fact)
  const kind = factSpec(fact)?.kind
  if (!kind) throw new RangeError(`no fact ${fact}`)
  const own = engine.si(fact)
  const values = spec[locale.system].map((text) => {
    const parsed = parseQuantity(text, { plain: true })
    const si = parsed.ok ? parsed.quantity.si : Number.NaN
    return {
      si,
      head: formatExact(si, kind, locale),
      own: own !== undefined && Math.abs(si - own) < 1e-6 * Math.max(1e-3, Math.abs(own)),
    }
  })
  const limit = spec['up-to'] === undefined ? undefined : engine.si(factPathOf(spec['up-to']))
  return {
    fact,
    values:
      limit === undefined
        ? values
        : values.filter((v) => v.si <= limit * (1 + 1e-9)).slice(-mostRows),
  }
}

const cell = (engine: Engine, figure: string): string => {
  const value = engine.figure(figureIdOf(figure))?.value
  return value?.ok ? value.text : '–'
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
  // Without its figure or its input the table has nothing to say here.
  if (!main || !engine.facts.has(rows.fact)) return undefined
  const columns = spec.columns && reckonerAxis(spec.columns, engine, locale)
  if (columns && !engine.facts.has(columns.fact)) return undefined
  const several = spec.figures ?? [{ figure: spec.figure, label: main.label }]
  return {
    id: spec.id,
    title: spec.title,
    about: spec.about,
    rowHead: spec.rows.label ?? factSpec(rows.fact)?.label ?? '',
    columnHeads: columns ? columns.values.map((v) => v.head) : several.map((f) => f.label),
    columnsHead: columns && (spec.columns?.label ?? factSpec(columns.fact)?.label),
    rows: rows.values.map((row) => ({
      head: row.head,
      own: row.own,
      cells: columns
        ? columns.values.map((column) =>
            cell(
              engine.vary(
                new Map([
                  [rows.fact, row.si],
                  [columns.fact, column.si],
                ]),
              ),
              spec.figure,
            ),
          )
        : ((varied) => several.map((f) => cell(varied, f.figure)))(
            engine.vary(new Map([[rows.fact, row.si]])),
          ),
    })),
    worksheet: { number: main.worksheet, id: useIdOf(spec.figure) },
    // The varied inputs are given by the reader, so only what else is typical makes the table an
    // estimate.
    estimate: main.toMeasure.some((path) => path !== rows.fact && path !== columns?.fact),
  }
}
