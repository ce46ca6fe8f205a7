import { monthOf } from '../../../model/day.ts'
import type { Problem } from '../../../model/problem.ts'
import type { UnitSystem } from '../../../model/quantity/kinds.ts'
import type { WeatherDay } from '../../../model/weather.ts'
import { inBothUnits } from '../../in-both-units.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { statedAt } from './valued.ts'

type Field = 'high' | 'low' | 'rain' | 'wind' | 'humidity'

/** What a record and a climate call the same thing, and how far apart they may be. */
const compared: readonly {
  readonly field: Field
  readonly climate: string
  readonly apart: (record: number, climate: number) => boolean
  readonly said: (si: number) => Readonly<Record<UnitSystem, string>>
}[] = [
  ...(['high', 'low'] as const).map((field) => ({
    field,
    climate: field === 'high' ? 'tmax' : 'tmin',
    // Kelvin; a month is seldom more than 5 off its mean.
    apart: (a: number, b: number) => Math.abs(a - b) > 10,
    said: (si: number) => ({
      us: `${Math.round(si * 1.8 - 459.67)} °F`,
      metric: `${Math.round(si - 273.15)} °C`,
    }),
  })),
  {
    field: 'rain',
    climate: 'rain',
    apart: (a, b) => a > 8 * b || a < b / 8,
    said: (si) => ({
      us: `${(si / 0.0254).toFixed(2)} in a day`,
      metric: `${(si * 1000).toFixed(1)} mm a day`,
    }),
  },
  {
    field: 'wind',
    climate: 'wind',
    apart: (a, b) => a > 1.8 * b || a < b / 1.8,
    said: (si) => ({ us: `${(si / 0.44704).toFixed(0)} mph`, metric: `${si.toFixed(1)} m/s` }),
  },
  {
    field: 'humidity',
    climate: 'humidity',
    apart: (a, b) => Math.abs(a - b) > 0.35,
    said: (si) => ({ us: `${Math.round(si * 100)} %`, metric: `${Math.round(si * 100)} %` }),
  },
]

/** Fewer days than this say nothing of a month. */
const fewest = 14
/** Days of a month, on the mean. */
const days = 30.4

const mean = (values: readonly number[]): number =>
  values.reduce((sum, v) => sum + v, 0) / values.length

/** The climate of the days of a record, SI; rain by the day. */
function expected(parsed: ParsedFacility, dates: readonly string[], key: string) {
  const months = parsed.file.climate ?? []
  const found = dates.flatMap((date) => {
    const i = months.findIndex((m) => m.month === monthOf(date))
    const value = i < 0 ? undefined : statedAt(parsed, ['climate', i, key])
    return value ? [key === 'rain' ? value.si / days : value.si] : []
  })
  return found.length === dates.length ? mean(found) : undefined
}

/** A record of weather is that of the same place as the climate, in the units that it says. */
export function checkRecord(parsed: ParsedFacility, record: readonly WeatherDay[]): Problem[] {
  const { units } = parsed.file
  return compared.flatMap(({ field, climate, apart, said }) => {
    const seen = record.filter((d) => d[field] !== undefined)
    if (seen.length < fewest) return []
    const usual = expected(
      parsed,
      seen.map((d) => d.date),
      climate,
    )
    const told = (si: number): string => {
      const both = said(si)
      return both.us === both.metric ? both.us : inBothUnits(units, both)
    }
    const found = mean(seen.map((d) => d[field] ?? 0))
    if (usual === undefined || !apart(found, usual)) return []
    return [
      parsed.tree.problem(
        parsed.tree.placeOf(['weather', 'file']),
        'facility/odd',
        `the weather record has ${told(found)} as its mean ${field}, the climate of the same months ${told(usual)}`,
        { hint: 'is the unit in the head of the column right?', severity: 'warning' },
      ),
    ]
  })
}
