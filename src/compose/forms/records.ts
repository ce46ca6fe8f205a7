import type { ManualRecords, PastDay, Span } from '../../model/records.ts'
import { median } from '../../validate/imports/median.ts'
import { type ComposeContext, printed } from '../context.ts'
import { surveyGrid, surveyPlaces } from './survey-grid.ts'

/** How far a day is off the mean of the fair month and nobody wonders, K; common practice, no source. */
const [cooler, warmer] = [22, 12]
/** Wind of a day against the mean, and loads against those of a dry day; common practice, no source. */
const [windier, busier] = [2.5, 2]

/** A span around what the facility says; undefined where it does not say it. */
const span = (
  si: number | undefined,
  from: (si: number) => number,
  to: (si: number) => number,
): Span | undefined => (si === undefined ? undefined : [from(si), to(si)])

const zero = (): number => 0
const itself = (si: number): number => si

/** Numbers outside these are asked about: they can be so, and mostly are not. */
function usual({ engine }: ComposeContext): ManualRecords['usual'] {
  const { si } = engine
  const depth = engine.siOfAll({
    target: 'cushion.depth.target',
    off: 'cushion.depth.tolerance',
  })
  const moisture = engine.siOfAll({
    dusty: 'cushion.moisture.dusty',
    held: 'cushion.moisture.held',
  })
  const loads = [si('demand.loads'), si('supply.loads')].filter((n) => n !== undefined)
  const widths = [si('oval.width.straights'), si('oval.width.turns')].filter((n) => n !== undefined)
  const most = (list: readonly number[]) => (list.length === 0 ? undefined : Math.max(...list))
  const spans: Readonly<Record<keyof ManualRecords['usual'], Span | undefined>> = {
    high: span(
      si('climate.tmax'),
      (t) => t - cooler,
      (t) => t + warmer,
    ),
    low: span(
      si('climate.tmin'),
      (t) => t - cooler,
      (t) => t + warmer,
    ),
    // More in a day than falls in a month.
    rain: span(si('climate.rain'), zero, itself),
    wind: span(si('climate.wind'), zero, (v) => windier * v),
    humidity: undefined,
    sun: undefined,
    loads: span(most(loads), zero, (n) => busier * n),
    stored: span(si('water.storage'), zero, itself),
    depth: depth && [Math.max(0, depth.target - 2 * depth.off), depth.target + 2 * depth.off],
    station: span(si('rail.length'), zero, itself),
    offset: span(most(widths), zero, itself),
    moisture: moisture && [moisture.dusty, moisture.held],
  }
  return Object.fromEntries(Object.entries(spans).filter(([, value]) => value !== undefined))
}

/** Several readings of one day. */
const several = (date: string, values: readonly number[], value: number): PastDay => ({
  date,
  value,
  least: Math.min(...values),
  most: Math.max(...values),
})

function past({ facility, engine }: ComposeContext): ManualRecords['past'] {
  const { surveys, moisture, weather, 'daily-log': log } = facility.imported
  const found = engine.facts.get('cushion.moisture.found')
  const samples = moisture.flatMap(({ days }) =>
    days.map(({ date, values }) => several(date, values, median(values))),
  )
  const single =
    samples.length === 0 && found?.provenance.kind === 'measured'
      ? [{ date: found.provenance.date, value: found.si }]
      : []
  const depths = surveys
    .filter((s) => s.of === 'cushion-depth')
    .flatMap((s) => s.days)
    .map(({ date, readings }) => {
      const values = readings.map((r) => r.value)
      return several(date, values, values.reduce((a, b) => a + b, 0) / values.length)
    })
  const byDay = (list: readonly PastDay[]): readonly PastDay[] =>
    list.toSorted((a, b) => a.date.localeCompare(b.date))
  return {
    depth: byDay(depths),
    moisture: [...samples, ...single],
    rain: weather.flat().map(({ date, rain }) => ({ date, value: rain })),
    high: weather.flat().map(({ date, high }) => ({ date, value: high })),
    loads: log
      .flat()
      .flatMap(({ date, loads }) => (loads === undefined ? [] : [{ date, value: loads }])),
  }
}

/** Steps to which a proposed line across is rounded, m: a foot, or half a meter. */
const steps = { us: 0.3048, metric: 0.5 } as const

/** Lines across where no survey has set them: each in the middle of its part of the width. */
function proposedOffsets(lines: number, context: ComposeContext): readonly number[] {
  const width = Math.min(
    context.engine.si('oval.width.straights') ?? Number.POSITIVE_INFINITY,
    context.engine.si('oval.width.turns') ?? Number.POSITIVE_INFINITY,
  )
  if (!Number.isFinite(width)) return []
  const step = steps[context.locale.system]
  return Array.from(
    { length: lines },
    (_, i) => Math.round((width * (i + 0.5)) / lines / step) * step,
  )
}

/** What the facility says of the records that a phone keeps. */
export function composeRecords(context: ComposeContext): ManualRecords {
  const { engine } = context
  const places = surveyPlaces(context)
  const texts = surveyGrid(context).stations
  const offsets = places.surveyed ? places.offsets : proposedOffsets(places.lines, context)
  const target = engine.si('cushion.depth.target')
  const moist = engine.si('cushion.moisture.target')
  return {
    stations: places.stations.map((si, i) => ({ si, text: texts[i] ?? '' })),
    offsets: offsets.map((si) => ({ si, text: printed(si, 'width', context) })),
    usual: usual(context),
    wanted: {
      ...(target === undefined ? {} : { depth: target }),
      ...(moist === undefined ? {} : { moisture: moist }),
    },
    past: past(context),
  }
}
