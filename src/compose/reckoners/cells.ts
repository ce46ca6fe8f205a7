import type { Engine } from '../../compute/engine/engine.ts'
import type { DayAxis, DayColumn } from '../../model/manual/today.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import type { KindName } from '../../model/quantity/kinds.ts'
import { readQuantity } from '../../model/quantity/read-quantity.ts'

/** Rows that are kept of a list that goes up to a fact of this facility. */
const mostRows = 6

/** An engine that is asked by names from content, which were checked. */
export type Asked = Engine<string, string, string>

export type Axis = {
  readonly fact: string
  readonly values: readonly { readonly si: number; readonly head: string; readonly own: boolean }[]
}

/** An axis of a table: its values in SI with their heads. */
export function axisOf(spec: DayAxis, kind: KindName, engine: Asked, locale: Locale): Axis {
  const { fact } = spec
  // A value of the manual's own is no reading of this track.
  const own = fact.startsWith('practice.') ? undefined : engine.si(fact)
  const values = spec[locale.system].map((text) => {
    const parsed = readQuantity(text, { plain: true })
    const si = parsed.ok ? parsed.quantity.si : Number.NaN
    return {
      si,
      head: formatExact(si, kind, locale),
      own: own !== undefined && Math.abs(si - own) < 1e-6 * Math.max(1e-3, Math.abs(own)),
    }
  })
  const limit = spec['up-to'] === undefined ? undefined : engine.si(spec['up-to'])
  return {
    fact,
    values:
      limit === undefined
        ? values
        : values.filter((v) => v.si <= limit * (1 + 1e-9)).slice(-mostRows),
  }
}

/** A figure, or a range: `11–29 h`, or one end where both are the same. */
function shownText(f: DayColumn, textOf: (id: string) => string | undefined): string {
  const [from, to] = [textOf(f.figure), f.to === undefined ? undefined : textOf(f.to)]
  if (from === undefined || to === undefined || from === to) return from ?? '–'
  // The unit once, where both have the same.
  const unit = /\s\S+$/u.exec(from)?.[0] ?? ''
  return unit !== '' && to.endsWith(unit)
    ? `${from.slice(0, -unit.length)}–${to}`
    : `${from} – ${to}`
}

/**
 * Cells of a row: over the values of a second input, or several figures side by side.
 * @param row The fact of the rows and its value (SI).
 */
export function cellsOf(
  row: readonly [fact: string, si: number],
  columns: Axis | undefined,
  figures: readonly DayColumn[],
  engine: Asked,
): readonly string[] {
  const engines = columns
    ? columns.values.map(({ si }) => engine.vary(new Map([row, [columns.fact, si]])))
    : [engine.vary(new Map([row]))]
  return engines.flatMap((varied) => figures.map((f) => shownText(f, varied.text)))
}
