import { type Dims, findUnit } from './units.ts'

export type UnitSystem = 'us' | 'metric'

/** How far, and to which side, a result is rounded when it is printed. */
export type Rounding = { readonly step: number; readonly mode: 'nearest' | 'up' | 'down' }

/** How a quantity is written in one unit system. */
export type Style = Rounding & {
  readonly unit: string
  /** What stands after the number; the unit's own name where it differs from what people write. */
  readonly label?: string
  /**
   * `fraction`: 2 1/4; `decimal`: as many places as the step has; `duration`: 1 h 25 min; `clock`:
   * 6:34; `date`: 2027-08-03.
   */
  readonly form: 'fraction' | 'decimal' | 'duration' | 'clock' | 'date' | 'money'
}

type Kind = {
  readonly dims: Dims
  readonly us: Style
  readonly metric: Style
}

const style = (unit: string, step: number, rest: Partial<Style> = {}): Style => ({
  unit,
  step,
  mode: 'nearest',
  form: 'decimal',
  ...rest,
})
const dims = (unit: string): Dims => {
  const found = findUnit(unit)
  if (!found) throw new RangeError(`no unit ${unit}`)
  return found.dims
}
const length = dims('m')
const both = (s: Style): { us: Style; metric: Style } => ({ us: s, metric: s })

/**
 * The kinds of quantity that a track's keeper meets, each with the rounding of the trade: depth to
 * the quarter inch or 5 mm, plans of time to 5 minutes, loads and passes to whole ones, upward.
 */
export const kinds = {
  depth: {
    dims: length,
    us: style('in', 1 / 4, { form: 'fraction' }),
    metric: style('mm', 5),
  },
  fineDepth: {
    dims: length,
    us: style('in', 1 / 16, { form: 'fraction' }),
    metric: style('mm', 1),
  },
  dent: {
    dims: length,
    us: style('in', 1 / 16, { form: 'fraction' }),
    metric: style('mm', 0.5),
  },
  stripe: {
    dims: length,
    us: style('in', 0.1),
    metric: style('cm', 0.1),
  },
  waterDepth: {
    dims: length,
    us: style('in', 0.01),
    metric: style('mm', 0.1),
  },
  thinDepth: {
    dims: length,
    us: style('in', 0.001),
    metric: style('mm', 0.01),
  },
  grain: {
    dims: length,
    us: style('in', 1 / 16, { form: 'fraction' }),
    metric: style('mm', 0.5),
  },
  sieveSize: { dims: length, ...both(style('mm', 0.01)) },
  smallWidth: {
    dims: length,
    us: style('in', 1),
    metric: style('cm', 1),
  },
  width: {
    dims: length,
    us: style('ft', 0.5),
    metric: style('m', 0.1),
  },
  distance: {
    dims: length,
    us: style('ft', 0.1),
    metric: style('m', 0.01),
  },
  reach: {
    dims: length,
    us: style('ft', 10),
    metric: style('m', 5),
  },
  longDistance: {
    dims: length,
    us: style('mi', 0.1),
    metric: style('km', 0.1),
  },
  elevation: {
    dims: length,
    us: style('ft', 1),
    metric: style('m', 1),
  },
  smallArea: {
    dims: [2, 0, 0, 0, 0, 0],
    us: style('ft2', 0.1, { label: 'ft²' }),
    metric: style('m2', 0.01, { label: 'm²' }),
  },
  area: {
    dims: [2, 0, 0, 0, 0, 0],
    us: style('ft2', 100, { label: 'ft²' }),
    metric: style('m2', 10, { label: 'm²' }),
  },
  land: {
    dims: [2, 0, 0, 0, 0, 0],
    us: style('acre', 0.1, { label: 'acres' }),
    metric: style('ha', 0.01),
  },
  patchVolume: {
    dims: [3, 0, 0, 0, 0, 0],
    us: style('ft3', 0.1, { label: 'ft³' }),
    metric: style('m3', 0.01, { label: 'm³' }),
  },
  barrow: {
    dims: [3, 0, 0, 0, 0, 0],
    us: style('ft3', 0.5, { label: 'ft³' }),
    metric: style('L', 5),
  },
  fillVolume: {
    dims: [3, 0, 0, 0, 0, 0],
    us: style('yd3', 1, { label: 'yd³' }),
    metric: style('m3', 1, { label: 'm³' }),
  },
  heap: {
    dims: [3, 0, 0, 0, 0, 0],
    us: style('yd3', 0.1, { label: 'yd³' }),
    metric: style('m3', 0.1, { label: 'm³' }),
  },
  waterVolume: {
    dims: [3, 0, 0, 0, 0, 0],
    us: style('gal', 50),
    metric: style('L', 100),
  },
  tankLoad: {
    dims: [3, 0, 0, 0, 0, 0],
    us: style('gal', 10),
    metric: style('L', 50),
  },
  smallWater: {
    dims: [3, 0, 0, 0, 0, 0],
    us: style('gal', 1, { mode: 'up' }),
    metric: style('L', 5, { mode: 'up' }),
  },
  mass: {
    dims: dims('kg'),
    us: style('ton', 1, { label: 'tons' }),
    metric: style('t', 1),
  },
  patchMass: {
    dims: dims('kg'),
    us: style('ton', 0.1, { label: 'tons' }),
    metric: style('t', 0.1),
  },
  machineMass: {
    dims: dims('kg'),
    us: style('lb', 100),
    metric: style('kg', 50),
  },
  duration: {
    dims: dims('s'),
    ...both(style('min', 5, { mode: 'up', form: 'duration' })),
  },
  minutes: {
    dims: dims('s'),
    ...both(style('min', 1, { mode: 'up', form: 'duration' })),
  },
  seconds: { dims: dims('s'), ...both(style('s', 1)) },
  hours: { dims: dims('s'), ...both(style('h', 0.1)) },
  daylightHours: {
    dims: dims('s'),
    ...both(style('h', 1)),
  },
  days: {
    dims: dims('s'),
    ...both(style('day', 1, { label: 'days' })),
  },
  dryDays: {
    dims: dims('s'),
    ...both(style('day', 0.1, { label: 'days' })),
  },
  landRate: {
    dims: [2, 0, -1, 0, 0, 0],
    us: style('acre/h', 0.1, { label: 'acres/h' }),
    metric: style('ha/h', 0.01),
  },
  massRate: {
    dims: [0, 1, -1, 0, 0, 0],
    us: style('ton/h', 1, { label: 'tons/h' }),
    metric: style('t/h', 1),
  },
  pull: {
    dims: dims('N'),
    us: style('lbf', 10),
    metric: style('kN', 0.1),
  },
  draft: {
    dims: [0, 1, -2, 0, 0, 0],
    us: style('lbf/ft', 1),
    metric: style('kN/m', 0.1),
  },
  speed: {
    dims: dims('mph'),
    us: style('mph', 0.1),
    metric: style('km/h', 0.1),
  },
  wind: {
    dims: dims('mph'),
    us: style('mph', 1),
    metric: style('km/h', 1),
  },
  waterFlow: {
    dims: dims('gpm'),
    us: style('gal/min', 1),
    metric: style('L/min', 1),
  },
  rainRate: {
    dims: dims('mph'),
    us: style('in/h', 0.1),
    metric: style('mm/h', 1),
  },
  unitWeight: {
    dims: dims('pcf'),
    us: style('lb/ft3', 1, { label: 'lb/ft³' }),
    metric: style('kg/m3', 10, { label: 'kg/m³' }),
  },
  laborRate: {
    dims: [-3, 0, 1, 0, 0, 0],
    us: style('h/ft3', 0.1, { label: 'h/ft³' }),
    metric: style('h/m3', 1, { label: 'h/m³' }),
  },
  vapor: {
    dims: dims('kPa'),
    ...both(style('kPa', 0.001)),
  },
  radiation: {
    dims: [0, 1, -2, 0, 0, 0],
    ...both(style('MJ/m2', 0.01, { label: 'MJ/m²' })),
  },
  dailyWater: {
    dims: dims('mph'),
    us: style('in/day', 0.01),
    metric: style('mm/day', 0.1),
  },
  hourlyWater: {
    dims: dims('mph'),
    us: style('in/h', 0.001),
    metric: style('mm/h', 0.01),
  },
  clock: {
    dims: dims('s'),
    ...both(style('min', 1, { form: 'clock' })),
  },
  quarterClock: {
    dims: dims('s'),
    ...both(style('min', 15, { form: 'clock' })),
  },
  date: {
    dims: [0, 0, 0, 0, 0, 0],
    ...both(style('', 1, { form: 'date' })),
  },
  soundLevel: {
    dims: [0, 0, 0, 0, 0, 0],
    ...both(style('dB', 1, { label: 'dBA' })),
  },
  voltage: { dims: dims('V'), ...both(style('kV', 10)) },
  dustLevel: {
    dims: dims('pcf'),
    ...both(style('ug/m3', 5, { label: 'µg/m³' })),
  },
  handMass: {
    dims: dims('kg'),
    us: style('lb', 1),
    metric: style('kg', 0.5),
  },
  pressure: {
    dims: dims('psi'),
    us: style('psi', 1),
    metric: style('kPa', 5),
  },
  power: {
    dims: dims('hp'),
    us: style('hp', 1),
    metric: style('kW', 1),
  },
  fuelRate: {
    dims: dims('gpm'),
    us: style('gal/h', 0.1),
    metric: style('L/h', 0.5),
  },
  fuelVolume: {
    dims: [3, 0, 0, 0, 0, 0],
    us: style('gal', 1, { mode: 'up' }),
    metric: style('L', 5, { mode: 'up' }),
  },
  share: { dims: [0, 0, 0, 0, 0, 0], ...both(style('%', 1)) },
  fineShare: {
    dims: [0, 0, 0, 0, 0, 0],
    ...both(style('%', 0.1)),
  },
  closeShare: {
    dims: [0, 0, 0, 0, 0, 0],
    ...both(style('%', 0.01)),
  },
  ratio: {
    dims: [0, 0, 0, 0, 0, 0],
    ...both(style('', 0.01)),
  },
  tenths: {
    dims: [0, 0, 0, 0, 0, 0],
    ...both(style('', 0.1)),
  },
  count: { dims: [0, 0, 0, 0, 0, 0], ...both(style('', 1)) },
  whole: {
    dims: [0, 0, 0, 0, 0, 0],
    ...both(style('', 1, { mode: 'up' })),
  },
  angle: { dims: dims('rad'), ...both(style('°', 1)) },
  fineAngle: { dims: dims('rad'), ...both(style('°', 0.1)) },
  temperature: {
    dims: dims('K'),
    us: style('°F', 1),
    metric: style('°C', 1),
  },
  money: {
    dims: dims('money'),
    ...both(style('money', 5, { form: 'money' })),
  },
  hourlyRate: {
    dims: [0, 0, -1, 0, 1, 0],
    ...both(style('money/h', 1, { form: 'money' })),
  },
  massPrice: {
    dims: [0, -1, 0, 0, 1, 0],
    us: style('money/ton', 0.5, { form: 'money' }),
    metric: style('money/t', 0.5, { form: 'money' }),
  },
  volumePrice: {
    dims: [-3, 0, 0, 0, 1, 0],
    us: style('money/gal', 0.01, { form: 'money' }),
    metric: style('money/L', 0.01, { form: 'money' }),
  },
} as const satisfies Readonly<Record<string, Kind>>

export type KindName = keyof typeof kinds

export const kindOf = (name: KindName): Kind => kinds[name]
