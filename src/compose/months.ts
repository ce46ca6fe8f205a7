import type { Engine } from '../compute/engine/engine.ts'
import { type FigureId, factPathOf } from '../compute/uses/ids.ts'
import type { WaterMonth } from '../model/charts.ts'
import { addDays, dayOfYear, monthOf } from '../model/day.ts'
import type { FactPath } from '../model/fact-spec.ts'
import type { ManualReckoner } from '../model/manual.ts'
import type { Quantity } from '../model/quantity/parse-quantity.ts'
import type { FacilityFile } from '../validate/schemas/facility.ts'
import type { Words } from '../validate/schemas/words.ts'

const monthName = (month: number, width: 'long' | 'short' = 'long'): string =>
  new Intl.DateTimeFormat('en-US', { month: width, timeZone: 'UTC' }).format(
    new Date(Date.UTC(2027, month - 1, 15)),
  )

/** Day of the year of the middle of a month. */
const middle = (month: number): number => dayOfYear(`2027-${String(month).padStart(2, '0')}-15`)

const monthOfDay = (number: number): number => monthOf(addDays('2027-01-01', number - 1))

type MonthEngine = { readonly month: number; readonly own: boolean; readonly engine: Engine }

/** The facility in each month whose climate it gives, in the order of the year. */
function monthEngines(engine: Engine, file: FacilityFile): readonly MonthEngine[] {
  const fairDay = engine.facts.get('fair.day-of-year')?.si
  return [...(file.climate ?? [])]
    .sort((a, b) => a.month - b.month)
    .map((m) => {
      const given = Object.entries(m).flatMap(([key, value]): [FactPath, number][] =>
        key === 'month' ? [] : [[factPathOf(`climate.${key}`), (value as unknown as Quantity).si]],
      )
      const own = fairDay !== undefined && monthOfDay(fairDay) === m.month
      // The month of the fair stands for its first race day, as all other figures do.
      return {
        month: m.month,
        own,
        engine: engine.vary(
          new Map<FactPath, number>([
            ...given,
            ['fair.day-of-year', own ? fairDay : middle(m.month)],
          ]),
        ),
      }
    })
}

/** The same water as {@link composeMonths} lists, for a chart. */
export function composeWaterMonths(
  engine: Engine,
  file: FacilityFile,
): readonly WaterMonth[] | undefined {
  const months = monthEngines(engine, file).flatMap(
    ({ month, own, engine: varied }): WaterMonth[] => {
      const water = varied.figure('demand.water')?.value
      const loads = varied.figure('demand.loads')?.value
      return water?.ok && loads?.ok
        ? [
            {
              name: monthName(month),
              short: monthName(month, 'short'),
              water: water.si,
              text: water.text,
              loads: loads.text,
              own,
            },
          ]
        : []
    },
  )
  return months.length < 2 ? undefined : months
}

/**
 * Water by month: the fair month's figures with the climate of each month that the facility gives.
 */
export function composeMonths(
  engine: Engine,
  file: FacilityFile,
  words: Words,
): ManualReckoner | undefined {
  const main = engine.figure('demand.water')
  if (!main?.value.ok) return undefined
  const rows = monthEngines(engine, file).map(({ month, own, engine: varied }) => {
    const cell = (id: FigureId): string => {
      const value = varied.figure(id)?.value
      return value?.ok ? value.text : '–'
    }
    return {
      head: monthName(month),
      own,
      cells: (['air.rate', 'demand.water', 'demand.loads', 'dry.hours'] as const).map(cell),
    }
  })
  if (rows.length < 2) return undefined
  return {
    id: 'months',
    title: words.months.title,
    about: words.months.about,
    rowHead: words.months.month,
    columnHeads: [words.months.air, words.months.water, words.months.loads, words.months.dry],
    columnsHead: undefined,
    rows,
    worksheet: { number: main.worksheet, id: 'demand' },
    estimate: main.estimate,
  }
}
