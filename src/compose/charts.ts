import type { Engine } from '../compute/engine/engine.ts'
import { figureIdOf } from '../compute/uses/ids.ts'
import { depletionAfter } from '../compute/weather/layer-drying.ts'
import { wetSurface } from '../compute/weather/wet-surface.ts'
import type { DryingCurve, HeatTable, PassPattern, RaceInterval } from '../model/charts.ts'
import type { Locale } from '../model/quantity/format-quantity.ts'
import type { Reckoner } from '../validate/schemas/library.ts'
import { numberOf } from './plans/plan-context.ts'
import { reckonerAxis } from './reckoner.ts'

/**
 * The table of felt temperature with the risk level of every field, over the same values as its
 * reckoner.
 */
export function composeHeatTable(
  spec: Reckoner | undefined,
  engine: Engine,
  locale: Locale,
): HeatTable | undefined {
  if (!spec?.columns) return undefined
  const rows = reckonerAxis(spec.rows, engine, locale)
  const columns = reckonerAxis(spec.columns, engine, locale)
  if (!engine.facts.has(rows.fact) || !engine.facts.has(columns.fact)) return undefined
  return {
    humidities: columns.values.map((c) => c.head),
    rows: rows.values.map((row) => ({
      temperature: row.head,
      cells: columns.values.map((column) => {
        const varied = engine.vary(
          new Map([
            [rows.fact, row.si],
            [columns.fact, column.si],
          ]),
        )
        const [felt, risk] = [
          varied.figure(figureIdOf(spec.figure))?.value,
          varied.figure('heat.risk')?.value,
        ]
        // Beyond the end of the weather service's chart nothing is printed, and nobody works.
        return felt?.ok && risk?.ok ? { text: felt.text, level: risk.si } : { text: '–', level: 4 }
      }),
    })),
  }
}

/**
 * Water behind the harrow's first lap, or in its place where that leaves no time; undefined where
 * neither fits.
 */
function waterOf(engine: Engine, clear: number, lap: number): RaceInterval['water'] {
  const [behind, off, alone, each] = [
    'gap.water-laps',
    'gap.watered',
    'gap.water-alone',
    'gap.water-lap',
  ].map((name) => numberOf(engine, name) ?? 0) as [number, number, number, number]
  if (behind > 0)
    return { figure: 'gap.water-laps', laps: behind, from: clear + lap, to: off, instead: false }
  return alone > 0
    ? {
        figure: 'gap.water-alone',
        laps: alone,
        from: clear,
        to: clear + alone * each,
        instead: true,
      }
    : undefined
}

/**
 * The minutes between two races; undefined where nothing here harrows, or the interval leaves no
 * time.
 */
export function composeRaceInterval(engine: Engine): RaceInterval | undefined {
  const [interval, clear, lap, laps, harrowed, open] = [
    'race-days.interval',
    'gap.clear',
    'between.lap',
    'between.laps',
    'gap.harrowed',
    'gap.open',
  ].map((name) => numberOf(engine, name))
  if (
    interval === undefined ||
    clear === undefined ||
    lap === undefined ||
    laps === undefined ||
    harrowed === undefined ||
    open === undefined
  )
    return undefined
  return { interval, clear, lap, laps, harrowed, open, water: waterOf(engine, clear, lap) }
}

/** How many steps the drying curve is drawn in. */
const steps = 48

/**
 * The drying of the cushion, a little beyond the day on which it dusts; by the same law as its
 * worksheet.
 */
export function composeDryingCurve(engine: Engine): DryingCurve | undefined {
  const [workable, toDust, total, readily, rate] = [
    'layer-dry.workable',
    'layer-dry.dust',
    'layer-dry.total',
    'layer-dry.readily',
    'air.rate',
  ].map((name) => numberOf(engine, name))
  const [depth, unitWeight, held, target, dusty] = [
    'cushion.depth.target',
    'cushion.unit-weight.worked',
    'cushion.moisture.held',
    'cushion.moisture.target',
    'cushion.moisture.dusty',
  ].map((name) => numberOf(engine, name))
  if (
    workable === undefined ||
    toDust === undefined ||
    total === undefined ||
    readily === undefined ||
    rate === undefined
  )
    return undefined
  if (
    depth === undefined ||
    unitWeight === undefined ||
    held === undefined ||
    target === undefined ||
    dusty === undefined
  )
    return undefined
  const dust = workable + toDust
  const points = Array.from({ length: steps + 1 }, (_, i) => {
    const time = (1.1 * dust * i) / steps
    return {
      time,
      moisture:
        held -
        (depletionAfter(0, total, readily, wetSurface * rate, time) * 1000) / (unitWeight * depth),
    }
  })
  return { points, held, target, dusty, workable, dust }
}

type Covering = {
  readonly figure: string
  readonly width: string
  readonly overlap: string /** Water goes from the outside toward the rail; all else outward. */
  readonly from?: 'outside'
}

/** Works that cover the whole width, with the capability and the width behind each. */
const covering: readonly Covering[] = [
  { figure: 'grade', width: 'gear.grade.width', overlap: 'gear.grade.overlap' },
  { figure: 'harrow', width: 'gear.harrow.width', overlap: 'gear.harrow.overlap' },
  { figure: 'screen', width: 'gear.screen.width', overlap: 'gear.screen.overlap' },
  { figure: 'drum', width: 'gear.roll-drum.width', overlap: 'gear.roll-drum.overlap' },
  { figure: 'condition', width: 'gear.condition.width', overlap: 'gear.condition.overlap' },
  {
    figure: 'spray',
    width: 'gear.spray.spray-width',
    overlap: 'gear.spray.overlap',
    from: 'outside',
  },
]

/**
 * Pass patterns of the implements that the facility has, from the figures of covering the whole
 * width.
 */
export function composePasses(engine: Engine): Readonly<Record<string, PassPattern>> {
  const [straights, turns] = [
    numberOf(engine, 'oval.width.straights') ?? 0,
    numberOf(engine, 'oval.width.turns') ?? 0,
  ]
  return Object.fromEntries(
    covering.flatMap(({ figure, width, overlap, from }): [string, PassPattern][] => {
      const [strips, effective] = [
        numberOf(engine, `${figure}.strips`),
        numberOf(engine, `${figure}.effective`),
      ]
      if (strips === undefined || effective === undefined) return []
      const kept = numberOf(engine, overlap) ?? 0
      return [
        [
          figure,
          {
            figure,
            strips,
            across: Math.max(straights, turns),
            covers: effective + kept,
            width,
            overlap: kept > 0 ? overlap : undefined,
            angled: (numberOf(engine, width) ?? 0) > effective + kept + 1e-6,
            from: from ?? 'rail',
          },
        ],
      ]
    }),
  )
}
