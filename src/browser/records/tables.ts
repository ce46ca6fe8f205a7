import type { Problem, Result } from '../../model/problem.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { KeptNumber } from '../../model/records.ts'
import { harmless } from '../../read/harmless-cell.ts'
import { printable } from '../../read/unprintable.ts'
import { readDailyLog } from '../../validate/imports/daily-log-table.ts'
import { readMoisture } from '../../validate/imports/moisture-table.ts'
import { readSurvey } from '../../validate/imports/survey-table.ts'
import { readWeather } from '../../validate/imports/weather-table.ts'
import { type DayKept, daysOf, type Kept, rowsOf } from './kept.ts'
import { placeText, soundNumber, unitOf, withoutUnit } from './numbers.ts'
import { ovenMoisture, weightOf } from './oven.ts'

/** The form whose rows are samples. */
export const sampleForm = 'moisture-log'

/** A cell; one that holds a comma, a quote or a line break stands in quotes (RFC 4180). */
const cell = (text: string): string => {
  const line = harmless(printable(text).replace(/\s*[\r\n]+\s*/g, '; '))
  return /[",]/.test(line) ? `"${line.replaceAll('"', '""')}"` : line
}
const row = (cells: readonly string[]): string => cells.map(cell).join(',')

/** A column's head with the unit of its cells. */
const head = (name: KeptNumber, system: UnitSystem): string => {
  const unit = unitOf(name, system)
  return unit === '' ? name : `${name} (${unit})`
}

/** A number as it was written, where it can be read. */
const numberCell = (name: KeptNumber, day: DayKept, system: UnitSystem): string =>
  soundNumber(name, day[name]) === undefined ? '' : withoutUnit(name, day[name] ?? '', system)

/** Moisture of a sample, as it was written or by the scale. */
export function sampleMoisture(texts: DayKept): string | undefined {
  if (texts['moisture'] !== undefined) return texts['moisture']
  const [wet, dry, jar] = [texts['wet'], texts['dry'], texts['jar']].map(weightOf)
  if (wet === undefined || dry === undefined || jar === undefined) return undefined
  const share = ovenMoisture(wet, dry, jar)
  return share === undefined ? undefined : `${Number((100 * share).toFixed(1))} %`
}

/** A table of the facility folder: what it is called here, its head, the rows of a day. */
type Table = {
  readonly file: string
  /** How the facility file names it. @param by Who took the readings. */
  readonly entry: (by: string) => string
  readonly head: (system: UnitSystem) => readonly string[]
  readonly rows: (date: string, day: DayKept, system: UnitSystem) => readonly (readonly string[])[]
  /** Days that have something for it, whether or not it is enough. */
  readonly concerns: (day: DayKept) => boolean
  /** The reader of the facility folder. @param date Of the phone. */
  readonly read: (text: string, date: string) => Result<unknown>
}

const at = { file: '', line: 1, column: 1, length: 1 }
const has = (day: DayKept, ...names: readonly string[]): boolean => names.some((n) => n in day)

const weatherColumns = ['high', 'low', 'rain', 'humidity', 'wind', 'sun'] as const
const weather: Table = {
  file: 'weather.csv',
  entry: () => 'weather: { file: weather.csv }',
  head: (s) => ['date', ...weatherColumns.map((n) => head(n, s))],
  rows: (date, day, s) => {
    const cells = weatherColumns.map((n) => numberCell(n, day, s))
    return cells.slice(0, 3).includes('') ? [] : [[date, ...cells]]
  },
  concerns: (day) => has(day, 'high', 'low', 'rain'),
  read: (text, date) => readWeather({ path: 'weather.csv', text }, { latitude: undefined, date }),
}

const depths: Table = {
  file: 'depths.csv',
  entry: (by) => `surveys: [{ of: cushion-depth, file: depths.csv, by: ${by} }]`,
  head: (s) => [head('station', s), head('offset', s), head('depth', s), 'date'],
  rows: (date, day, s) =>
    Object.entries(day)
      .flatMap(([name, text]) => {
        const [, station, offset] = /^depth@([\d.]+),([\d.]+)$/.exec(name) ?? []
        return soundNumber('depth', text) === undefined || station === undefined
          ? []
          : [{ station: Number(station), offset: Number(offset), text }]
      })
      .sort((a, b) => a.station - b.station || a.offset - b.offset)
      .map((r) => [
        placeText('station', r.station, s),
        placeText('offset', r.offset, s),
        withoutUnit('depth', r.text, s),
        date,
      ]),
  concerns: (day) => Object.keys(day).some((name) => name.startsWith('depth@')),
  read: (text, date) =>
    readSurvey({ path: 'depths.csv', text }, { of: 'cushion-depth', by: '' }, { at, date }),
}

const moisture: Table = {
  file: 'moisture.csv',
  entry: (by) => `moisture: { file: moisture.csv, by: ${by} }`,
  head: (s) => ['date', head('station', s), head('offset', s), head('moisture', s)],
  rows: (date, day, s) =>
    rowsOf(day, sampleForm).flatMap(({ texts }) => {
      const found = sampleMoisture(texts)
      return soundNumber('moisture', found) === undefined
        ? []
        : [
            [
              date,
              numberCell('station', texts, s),
              numberCell('offset', texts, s),
              withoutUnit('moisture', found ?? '', s),
            ],
          ]
    }),
  concerns: (day) => rowsOf(day, sampleForm).length > 0,
  read: (text, date) => readMoisture({ path: 'moisture.csv', text }, { by: '' }, { at, date }),
}

const logged = ['use', 'work', 'seen', 'tomorrow', 'by'] as const
const log: Table = {
  file: 'log.csv',
  entry: () => 'daily-log: { file: log.csv }',
  head: (s) => ['date', 'use', 'loads', head('stored', s), 'work', 'seen', 'tomorrow', 'by'],
  rows: (date, day, s) => [
    [
      date,
      day['use'] ?? '',
      numberCell('loads', day, s),
      numberCell('stored', day, s),
      ...(['work', 'seen', 'tomorrow', 'by'] as const).map((n) => day[n] ?? ''),
    ],
  ],
  concerns: (day) => has(day, 'loads', 'stored', ...logged),
  read: (text, date) => readDailyLog({ path: 'log.csv', text }, { date }),
}

/** Every table of the facility folder that a phone can fill. */
export const tables = { weather, depths, moisture, log } as const
export type TableName = keyof typeof tables

/** A table as it is saved. */
export type SavedTable = {
  readonly name: TableName
  readonly file: string
  readonly text: string
  readonly days: number
  /** Days that have something for it and are left out, since the folder would refuse them. */
  readonly left: number
  /** What the reader of the folder says of the whole. */
  readonly problems: readonly Problem[]
}

const textOf = (lines: readonly (readonly string[])[]): string => `${lines.map(row).join('\n')}\n`

/**
 * The tables that the facility folder reads, from what is kept: days that it would refuse are left
 * out, each told by the folder's own reader.
 * @param today Of the phone: nothing has been seen after it.
 */
export function savedTables(kept: Kept, system: UnitSystem, today: string): readonly SavedTable[] {
  return (Object.keys(tables) as TableName[]).map((name) => {
    const { file, head: headOf, rows, concerns, read } = tables[name]
    const days = daysOf(kept).filter((date) => concerns(kept[date] ?? {}))
    const sound = days
      .map((date) => rows(date, kept[date] ?? {}, system))
      .filter((list) => list.length > 0 && read(textOf([headOf(system), ...list]), today).value)
    const text = textOf([headOf(system), ...sound.flat()])
    return {
      name,
      file,
      text,
      days: sound.length,
      left: days.length - sound.length,
      problems:
        sound.length === 0
          ? []
          : read(text, today).problems.filter(({ severity }) => severity === 'error'),
    }
  })
}

/** The head of the table of everything. */
export const allHead = ['date', 'name', 'text'] as const

/** All that is kept, for another phone: no part of the facility folder. Line breaks stay. */
export const savedAll = (kept: Kept): string =>
  [
    allHead.join(','),
    ...daysOf(kept).flatMap((date) =>
      Object.entries(kept[date] ?? {})
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([name, text]) => [date, name, `"${harmless(printable(text)).replaceAll('"', '""')}"`])
        .map(([day = '', name = '', text = '']) => `${day},${cell(name)},${text}`),
    ),
    '',
  ].join('\n')
