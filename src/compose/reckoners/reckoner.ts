import type { Engine } from '../../compute/engine/engine.ts'
import { factPathOf, figureIdOf } from '../../compute/uses/ids.ts'
import { useIdOf } from '../../compute/uses/use.ts'
import { type FactPath, factSpec } from '../../model/fact-spec.ts'
import type { ManualReckoner } from '../../model/manual/reckoner.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import { parseQuantity } from '../../model/quantity/parse-quantity.ts'
import type { Reckoner } from '../../validate/schemas/library.ts'
import { namedText } from '../context.ts'

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
  // A value of the manual's own is no reading of this track.
  const own = fact.startsWith('practice.') ? undefined : engine.si(fact)
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

type Shown = {
  readonly figure: string
  readonly to?: string | undefined
  readonly label: string
}

/** A figure, or a range: `11–29 h`, or one end where both are the same. */
function shownText(f: Shown, textOf: (id: string) => string | undefined): string {
  const [from, to] = [textOf(f.figure), f.to === undefined ? undefined : textOf(f.to)]
  if (from === undefined || to === undefined || from === to) return from ?? '–'
  // The unit once, where both have the same.
  const unit = /\s\S+$/u.exec(from)?.[0] ?? ''
  return unit !== '' && to.endsWith(unit)
    ? `${from.slice(0, -unit.length)}–${to}`
    : `${from} – ${to}`
}

/** Cells of a row: over the values of a second input, or several figures side by side. */
function cellsOf(
  rows: Axis,
  si: number,
  columns: Axis | undefined,
  figures: readonly Shown[],
  engine: Engine,
): readonly string[] {
  const engines = columns
    ? columns.values.map((column) =>
        engine.vary(
          new Map([
            [rows.fact, si],
            [columns.fact, column.si],
          ]),
        ),
      )
    : [engine.vary(new Map([[rows.fact, si]]))]
  return engines.flatMap((varied) =>
    figures.map((f) => shownText(f, (id) => namedText(id, { engine: varied }))),
  )
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
  const own = [{ figure: spec.figure, to: spec.to, label: main.label }]
  const figures = columns ? own : (spec.figures ?? own)
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
      cells: cellsOf(rows, si, columns, figures, engine),
    })),
    worksheet: { number: main.worksheet, id: useIdOf(spec.figure) },
    // The varied inputs are given by the reader, so only what else is typical makes the table an
    // estimate.
    estimate: main.toMeasure.some((path) => path !== rows.fact && path !== columns?.fact),
  }
}
