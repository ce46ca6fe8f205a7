import type { Engine } from '../compute/engine.ts'
import type { HeatTable, RaceInterval } from '../model/charts.ts'
import type { Locale } from '../model/quantity/format-quantity.ts'
import type { Reckoner } from '../validate/schemas/library.ts'
import { valueOf } from './plans/plan-context.ts'
import { reckonerAxis } from './reckoner.ts'

/** The table of felt temperature with the risk level of every field, over the same values as its reckoner. */
export function composeHeatTable(spec: Reckoner | undefined, engine: Engine, locale: Locale): HeatTable | undefined {
  if (!spec?.columns || !engine.facts.has(spec.rows.fact) || !engine.facts.has(spec.columns.fact)) return undefined
  const rows = reckonerAxis(spec.rows, engine, locale)
  const columns = reckonerAxis(spec.columns, engine, locale)
  return {
    humidities: columns.values.map((c) => c.head),
    rows: rows.values.map((row) => ({
      temperature: row.head,
      cells: columns.values.map((column) => {
        const varied = engine.vary(new Map([[rows.fact, row.si], [columns.fact, column.si]]))
        const [felt, risk] = [varied.figure(spec.figure)?.value, varied.figure('heat.risk')?.value]
        // Beyond the end of the weather service's chart nothing is printed, and nobody works.
        return felt?.ok && risk?.ok ? { text: felt.text, level: risk.si } : { text: '–', level: 4 }
      }),
    })),
  }
}

/** The minutes between two races; undefined where nothing here harrows, or the interval leaves no time. */
export function composeRaceInterval(engine: Engine): RaceInterval | undefined {
  const [interval, clear, lap, laps, harrowed, open] = ['race-days.interval', 'gap.clear', 'between.lap', 'between.laps', 'gap.harrowed', 'gap.open'].map((name) => valueOf(engine, name))
  if (interval === undefined || clear === undefined || lap === undefined || laps === undefined || harrowed === undefined || open === undefined) return undefined
  const waterLaps = valueOf(engine, 'gap.water-laps') ?? 0
  return { interval, clear, lap, laps, harrowed, open, waterLaps, watered: waterLaps > 0 ? valueOf(engine, 'gap.watered') : undefined }
}
