import { isEstimated } from '../../model/figure.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import { formatQuantity } from '../../model/quantity/format-quantity.ts'
import { escapeHtml } from '../../render/text/escape-html.ts'
import { largeNumberHtml, quantityHtml } from '../../render/text/number-html.ts'
import type { Day } from './day.ts'
import type { DayEngine } from './day-engine.ts'

/** A pattern of the pages' words with values in its places. */
export const put = (words: string, values: Readonly<Record<string, string>>): string =>
  words.replace(/\{([a-z]+)\}/g, (_, name: string) => values[name] ?? '')

/** A quantity as pages show it, or why there is none. */
export type Said =
  | {
      readonly ok: true
      readonly si: number
      readonly text: string
      readonly number: string
      readonly unit: string
      readonly estimate: boolean
    }
  | { readonly ok: false; readonly reason: string }

/** What an engine says of a name; undefined for what is none here. */
function saidBy(name: string, engine: DayEngine, day: Day): Said | undefined {
  const figure = engine.figure(name)
  const measured = day.changed()
  if (figure) {
    const { value, toMeasure } = figure
    if (!value.ok) return value
    return { ...value, estimate: toMeasure.some((path) => !measured.has(path)) }
  }
  const fact = engine.facts.get(name)
  if (!fact) return undefined
  const { kind, si } = fact
  return {
    ok: true,
    si,
    ...formatQuantity(si, kind, day.locale, 'nearest'),
    text: formatExact(si, kind, day.locale, 'prose'),
    estimate: isEstimated(fact.provenance) && !measured.has(name),
  }
}

/** What the manual says. */
export const printedOf = (name: string, day: Day): Said | undefined =>
  saidBy(name, day.printed, day)

/** What the day says: nothing where something that it rests on cannot be right. */
export function nowOf(name: string, day: Day): Said | undefined {
  const [label] = day.waitsFor(name)
  if (label !== undefined) return { ok: false, reason: `${day.file.words.look} ${label}` }
  return saidBy(name, day.engine(), day)
}

/** Whether the day says something else than the manual, to a reader. */
export const differs = (now: Said | undefined, printed: Said | undefined): boolean =>
  now?.ok === true && printed?.ok === true
    ? now.text !== printed.text
    : now?.ok !== printed?.ok ||
      (now?.ok === false && !printed?.ok && now.reason !== printed?.reason)

/** As it is read aloud. */
export const spoken = (said: Said | undefined, day: Day): string =>
  said?.ok ? said.text : `${day.file.words.none}${said ? `: ${said.reason}` : ''}`

/** In running text. */
export const inlineHtml = (said: Said | undefined, day: Day): string =>
  said?.ok
    ? `<span${said.estimate ? ' class="estimate"' : ''}>${quantityHtml(said.text)}</span>`
    : `<span class="day-none">${escapeHtml(spoken(said, day))}</span>`

/** Set large: number, unit beside it; an estimate says so. */
export function largeHtml(said: Said | undefined, day: Day): string {
  if (!said?.ok) return `<span class="day-none">${escapeHtml(spoken(said, day))}</span>`
  const [number, unit] = said.unit === '°' ? [`${said.number}°`, ''] : [said.number, said.unit]
  const guess = said.estimate ? ` <em class="day-guess">${escapeHtml(day.file.estimate)}</em>` : ''
  return `<span class="number">${largeNumberHtml(number)}</span>${unit && ` <span class="unit">${escapeHtml(unit)}</span>`}${guess}`
}
