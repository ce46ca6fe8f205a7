import { daylight } from '../daylight/daylight.ts'
import { dailyDemand } from '../water/daily-demand.ts'
import { drying } from '../weather/drying.ts'
import { heat } from '../weather/heat.ts'
import { layerDrying } from '../weather/layer-drying.ts'
import { rainAndDrying } from '../weather/rain-and-drying.ts'
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

function air(known: ReadonlySet<string>): Use[] {
  if (!all(known, 'climate.tmax', 'climate.tmin', 'place.latitude', 'fair.day-of-year')) return []
  const shared = {
    tmax: fact('climate.tmax'),
    tmin: fact('climate.tmin'),
    latitude: fact('place.latitude'),
    day: fact('fair.day-of-year'),
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
            load: figure('cycle.water'),
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
    use('rain', rainAndDrying, {
      rain: fact('practice.rain'),
      open: fact('practice.open-curve-number'),
      closed: fact('practice.closed-curve-number'),
      depth: fact('cushion.depth.target'),
      unitWeight: fact('cushion.unit-weight.worked'),
      target: fact('cushion.moisture.target'),
      held: fact('cushion.moisture.held'),
      rate: figure('air.rate'),
      daylight: figure('dry.daylight'),
    }),
  ]
}

/** The record of daily weather that the facility keeps. */
export function recordUses(known: ReadonlySet<string>, { weather }: Readings): readonly Use[] {
  if (!weather || !known.has('place.latitude')) return []
  const elevation = known.has('place.elevation') ? fact('place.elevation') : fixed(0, 'as-at-sea')
  return [
    use('record', weatherRecord(weather), {
      ...cushion,
      curve: fact('practice.open-curve-number'),
      latitude: fact('place.latitude'),
      elevation,
      windHeight: fact('practice.wind-height'),
      area: figure('area.total'),
    }),
  ]
}

/** Figures of weather and daylight, as far as the facility gives place, dates and climate. */
export const weatherUses = (known: ReadonlySet<string>): readonly Use[] => [
  ...air(known),
  ...(all(known, 'climate.tmax', 'climate.humidity')
    ? [
        use('heat', heat, {
          temperature: fact('climate.tmax'),
          humidity: fact('climate.humidity'),
        }),
      ]
    : []),
  ...(all(known, 'place.latitude', 'place.longitude', 'fair.day-number', 'fair.zone')
    ? [
        use('daylight', daylight, {
          latitude: fact('place.latitude'),
          longitude: fact('place.longitude'),
          day: fact('fair.day-number'),
          zone: fact('fair.zone'),
        }),
      ]
    : []),
]
