import * as z from 'zod'
import type { WeatherDay } from '../../model/weather.ts'
import type { Import } from './import.ts'
import { tableFile } from './table-file.ts'
import { readWeather } from './weather-table.ts'

/**
 * The entry of the facility file: a table of daily weather in the facility folder, with humidity,
 * wind and sunshine where they are observed.
 */
const weatherEntry = z.strictObject({ ...tableFile })

/** A facility has one record at most. */
export const weather = {
  under: 'top',
  entries: weatherEntry,
  read: (source, _, context) => readWeather(source, context),
} as const satisfies Import<z.output<typeof weatherEntry>, readonly WeatherDay[]>
