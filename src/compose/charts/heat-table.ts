import { figureIdOf } from '../../compute/uses/ids.ts'
import type { HeatTable } from '../../model/manual/charts.ts'
import { type ComposeContext, itemsOf } from '../context.ts'
import { reckonerAxis } from '../reckoners/reckoner.ts'

/** Beyond the end of the weather service's chart nothing is printed, and nobody works. */
const beyond = { text: '–', level: 4 } as const

/**
 * The table of felt temperature with the risk level of every field, over the same values as its
 * reckoner.
 */
export function composeHeatTable({
  library,
  engine,
  locale,
}: ComposeContext): HeatTable | undefined {
  const spec = itemsOf(library.reckoners).find((r) => r.id === 'heat')
  if (!spec?.columns) return undefined
  const rows = reckonerAxis(spec.rows, engine, locale)
  const columns = reckonerAxis(spec.columns, engine, locale)
  const figure = figureIdOf(spec.figure)
  if (!engine.facts.has(rows.fact) || !engine.facts.has(columns.fact)) return undefined
  const field = (row: number, column: number): HeatTable['rows'][number]['cells'][number] => {
    const varied = engine.vary(
      new Map([
        [rows.fact, row],
        [columns.fact, column],
      ]),
    )
    const [text, level] = [varied.text(figure), varied.si('heat.risk')]
    return text === undefined || level === undefined ? beyond : { text, level }
  }
  return {
    humidities: columns.values.map((c) => c.head),
    rows: rows.values.map((row) => ({
      temperature: row.head,
      cells: columns.values.map((column) => field(row.si, column.si)),
    })),
  }
}
