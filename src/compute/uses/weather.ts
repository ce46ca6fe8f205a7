import { daylight } from '../daylight/daylight.ts'
import { dailyDemand } from '../water/daily-demand.ts'
import { chill } from '../weather/chill.ts'
import { drying } from '../weather/drying.ts'
import { dryingClock } from '../weather/drying-clock.ts'
import { heat } from '../weather/heat.ts'
import { layerDrying } from '../weather/layer-drying.ts'
import { rainBalance } from '../weather/rain-balance.ts'
import {
  evapotranspiration,
  evapotranspirationByTemperature,
} from '../weather/reference-evapotranspiration.ts'
import { weatherRecord } from '../weather/weather-record.ts'
import type { Readings } from './readings.ts'
import { fact, figure, fixed, type Use, use } from './use.ts'

const cushion = {
  depth: fact('cushion.depth.target'),
  unitWeight: fact('cushion.unit-weight.worked'),
  held: fact('cushion.moisture.held'),
  target: fact('cushion.moisture.target'),
  dusty: fact('cushion.moisture.dusty'),
  share: fact('practice.readily'),
}

const all = (known: ReadonlySet<string>, ...paths: readonly string[]): boolean =>
  paths.every((p) => known.has(p))

const base = {
  early: fact('practice.wetting.base-early'),
  late: fact('practice.wetting.base-late'),
}

const pressed = (surface: 'open' | 'flattened' | 'rolled', end: 'early' | 'late') =>
  surface === 'open'
    ? fixed(0, 'nothing-presses')
    : fact(`practice.wetting.pressed-${surface}-${end}`)

/** What the cushion and what lies below take of a rain: the quick and the slow end of each. */
const uncertain = (surface: 'open' | 'flattened' | 'rolled') => ({
  solids: fact('cushion.unit-weight.solids'),
  fillEarly: fact('practice.wetting.fill-early'),
  fillLate: fact('practice.wetting.fill-late'),
  baseEarly: surface === 'rolled' ? fixed(0, 'shut-by-rolling') : base.early,
  baseLate: surface === 'rolled' ? fixed(0, 'shut-by-rolling') : base.late,
  pondEarly: fact(`practice.wetting.pond-${surface}-early`),
  pondLate: fact(`practice.wetting.pond-${surface}-late`),
  drawEarly: fact('practice.wetting.draw-early'),
  drawLate: fact('practice.wetting.draw-late'),
})

/** A rain on the three states of the surface, and when each is dry by the clock. */
function rain(known: ReadonlySet<string>): readonly Use[] {
  const states = [
    { id: 'rain', clock: 'back', surface: 'open' },
    { id: 'rain-flattened', clock: 'back-flattened', surface: 'flattened' },
    { id: 'rain-rolled', clock: 'back-rolled', surface: 'rolled' },
  ] as const
  const clock = all(known, 'place.latitude', 'place.longitude', 'fair.day', 'fair.zone')
  return states.flatMap(({ id, clock: clockId, surface }) => [
    use(id, rainBalance, {
      ...uncertain(surface),
      rain: fact('practice.rain'),
      depth: fact('cushion.depth.target'),
      unitWeight: fact('cushion.unit-weight.worked'),
      packed: fact('cushion.unit-weight.compacted'),
      target: fact('cushion.moisture.target'),
      held: fact('cushion.moisture.held'),
      pressedEarly: pressed(surface, 'early'),
      pressedLate: pressed(surface, 'late'),
      rate: figure('air.rate'),
      share: fact('practice.wetting.day'),
      daylight: figure('dry.daylight'),
    }),
    ...(clock
      ? [
          use(clockId, dryingClock, {
            early: figure(`${id}.heel-early`),
            late: figure(`${id}.heel-late`),
            daylight: figure('dry.daylight'),
            rise: figure('daylight.rise'),
            set: figure('daylight.set'),
          }),
        ]
      : []),
  ])
}

function air(known: ReadonlySet<string>): Use[] {
  if (!all(known, 'climate.tmax', 'climate.tmin', 'place.latitude', 'fair.day')) return []
  const shared = {
    tmax: fact('climate.tmax'),
    tmin: fact('climate.tmin'),
    latitude: fact('place.latitude'),
    day: fact('fair.day'),
  }
  const whole = all(known, 'climate.humidity', 'climate.wind', 'climate.sun', 'place.elevation')
  return [
    whole
      ? use('air', evapotranspiration, {
          ...shared,
          humidity: fact('climate.humidity'),
          wind: fact('climate.wind'),
          height: fact('practice.wind-height'),
          sun: fact('climate.sun'),
          elevation: fact('place.elevation'),
        })
      : use('air', evapotranspirationByTemperature, shared),
    ...(known.has('gear.spray.tank')
      ? [
          use('demand', dailyDemand, {
            rate: figure('air.rate'),
            area: figure('area.total'),
            extra: figure('round.extra'),
            load: figure('fleet.mean'),
          }),
        ]
      : []),
    use('dry', drying, {
      rate: figure('air.rate'),
      depth: fact('practice.water.pass-depth'),
      latitude: shared.latitude,
      day: shared.day,
    }),
    use('layer-dry', layerDrying, { ...cushion, rate: figure('air.rate') }),
    ...rain(known),
  ]
}

/** The record of daily weather that the facility keeps. */
export function recordUses(known: ReadonlySet<string>, { weather }: Readings): readonly Use[] {
  if (!weather || !known.has('place.latitude')) return []
  const elevation = known.has('place.elevation') ? fact('place.elevation') : fixed(0, 'as-at-sea')
  return [
    use('record', weatherRecord(weather), {
      ...cushion,
      ...uncertain('open'),
      latitude: fact('place.latitude'),
      elevation,
      windHeight: fact('practice.wind-height'),
      area: figure('area.total'),
    }),
  ]
}

/** How cold a cold evening feels; the reckoner varies it. */
const cold = use('chill', chill, {
  air: fact('practice.cold.air'),
  wind: fact('practice.cold.wind'),
})

/** Figures of weather and daylight, as far as the facility gives place, dates and climate. */
export const weatherUses = (known: ReadonlySet<string>): readonly Use[] => [
  ...air(known),
  cold,
  ...(all(known, 'climate.tmax', 'climate.humidity')
    ? [
        use('heat', heat, {
          temperature: fact('climate.tmax'),
          humidity: fact('climate.humidity'),
        }),
      ]
    : []),
  ...(all(known, 'place.latitude', 'place.longitude', 'fair.day', 'fair.zone')
    ? [
        use('daylight', daylight, {
          latitude: fact('place.latitude'),
          longitude: fact('place.longitude'),
          day: fact('fair.day'),
          zone: fact('fair.zone'),
        }),
      ]
    : []),
]
