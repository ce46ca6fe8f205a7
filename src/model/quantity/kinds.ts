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
  readonly means: string
  readonly example: string
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
    means: 'a depth',
    example: '2 1/2 in',
    us: style('in', 1 / 4, { form: 'fraction' }),
    metric: style('mm', 5),
  },
  fineDepth: {
    dims: length,
    means: 'a small depth',
    example: '3/8 in',
    us: style('in', 1 / 8, { form: 'fraction' }),
    metric: style('mm', 1),
  },
  dent: {
    dims: length,
    means: 'a very small depth',
    example: '1/16 in',
    us: style('in', 1 / 16, { form: 'fraction' }),
    metric: style('mm', 0.5),
  },
  stripe: {
    dims: length,
    means: 'a width',
    example: '1.7 in',
    us: style('in', 0.1),
    metric: style('cm', 0.1),
  },
  waterDepth: {
    dims: length,
    means: 'a depth of water',
    example: '0.10 in',
    us: style('in', 0.01),
    metric: style('mm', 0.1),
  },
  thinDepth: {
    dims: length,
    means: 'a very small depth',
    example: '0.002 in',
    us: style('in', 0.001),
    metric: style('mm', 0.01),
  },
  grain: {
    dims: length,
    means: 'a grain size',
    example: '1/8 in',
    us: style('in', 1 / 16, { form: 'fraction' }),
    metric: style('mm', 0.5),
  },
  sieveSize: { dims: length, means: 'a grain size', example: '0.3 mm', ...both(style('mm', 0.01)) },
  smallWidth: {
    dims: length,
    means: 'a width',
    example: '8 in',
    us: style('in', 1),
    metric: style('cm', 1),
  },
  width: {
    dims: length,
    means: 'a width',
    example: '65 ft',
    us: style('ft', 0.5),
    metric: style('m', 0.1),
  },
  distance: {
    dims: length,
    means: 'a distance',
    example: '600 ft',
    us: style('ft', 0.1),
    metric: style('m', 0.01),
  },
  reach: {
    dims: length,
    means: 'a distance',
    example: '3,000 ft',
    us: style('ft', 10),
    metric: style('m', 5),
  },
  longDistance: {
    dims: length,
    means: 'a distance',
    example: '6 mi',
    us: style('mi', 0.1),
    metric: style('km', 0.1),
  },
  elevation: {
    dims: length,
    means: 'a height above sea level',
    example: '900 ft',
    us: style('ft', 1),
    metric: style('m', 1),
  },
  smallArea: {
    dims: [2, 0, 0, 0, 0, 0],
    means: 'an area',
    example: '12 ft2',
    us: style('ft2', 0.1, { label: 'ft²' }),
    metric: style('m2', 0.01, { label: 'm²' }),
  },
  area: {
    dims: [2, 0, 0, 0, 0, 0],
    means: 'an area',
    example: '180,000 ft2',
    us: style('ft2', 100, { label: 'ft²' }),
    metric: style('m2', 10, { label: 'm²' }),
  },
  land: {
    dims: [2, 0, 0, 0, 0, 0],
    means: 'an area',
    example: '4 acres',
    us: style('acre', 0.1, { label: 'acres' }),
    metric: style('ha', 0.01),
  },
  patchVolume: {
    dims: [3, 0, 0, 0, 0, 0],
    means: 'a small volume',
    example: '8 ft3',
    us: style('ft3', 0.1, { label: 'ft³' }),
    metric: style('m3', 0.01, { label: 'm³' }),
  },
  barrow: {
    dims: [3, 0, 0, 0, 0, 0],
    means: 'what a wheelbarrow holds',
    example: '3 ft3',
    us: style('ft3', 0.5, { label: 'ft³' }),
    metric: style('L', 5),
  },
  fillVolume: {
    dims: [3, 0, 0, 0, 0, 0],
    means: 'a volume of material',
    example: '40 yd3',
    us: style('yd3', 1, { label: 'yd³' }),
    metric: style('m3', 1, { label: 'm³' }),
  },
  heap: {
    dims: [3, 0, 0, 0, 0, 0],
    means: 'a heap of material',
    example: '1.5 yd3',
    us: style('yd3', 0.1, { label: 'yd³' }),
    metric: style('m3', 0.1, { label: 'm³' }),
  },
  waterVolume: {
    dims: [3, 0, 0, 0, 0, 0],
    means: 'a volume of water',
    example: '2,000 gal',
    us: style('gal', 50),
    metric: style('L', 100),
  },
  smallWater: {
    dims: [3, 0, 0, 0, 0, 0],
    means: 'a small volume of water',
    example: '5 gal',
    us: style('gal', 1, { mode: 'up' }),
    metric: style('L', 5, { mode: 'up' }),
  },
  mass: {
    dims: dims('kg'),
    means: 'a mass of material',
    example: '40 tons',
    us: style('ton', 1, { label: 'tons' }),
    metric: style('t', 1),
  },
  patchMass: {
    dims: dims('kg'),
    means: 'a small mass of material',
    example: '0.5 ton',
    us: style('ton', 0.1, { label: 'tons' }),
    metric: style('t', 0.1),
  },
  machineMass: {
    dims: dims('kg'),
    means: 'the mass of a machine',
    example: '12,000 lb',
    us: style('lb', 100),
    metric: style('kg', 50),
  },
  duration: {
    dims: dims('s'),
    means: 'a time',
    example: '1 h 25 min',
    ...both(style('min', 5, { mode: 'up', form: 'duration' })),
  },
  minutes: {
    dims: dims('s'),
    means: 'a time',
    example: '12 min',
    ...both(style('min', 1, { mode: 'up', form: 'duration' })),
  },
  seconds: { dims: dims('s'), means: 'a short time', example: '30 s', ...both(style('s', 1)) },
  hours: { dims: dims('s'), means: 'hours of work', example: '6 h', ...both(style('h', 0.1)) },
  daylightHours: {
    dims: dims('s'),
    means: 'hours of daylight',
    example: '12 h',
    ...both(style('h', 1)),
  },
  days: {
    dims: dims('s'),
    means: 'a number of days',
    example: '3 days',
    ...both(style('day', 1, { label: 'days' })),
  },
  dryDays: {
    dims: dims('s'),
    means: 'a number of days and tenths',
    example: '2.5 days',
    ...both(style('day', 0.1, { label: 'days' })),
  },
  landRate: {
    dims: [2, 0, -1, 0, 0, 0],
    means: 'an area worked in an hour',
    example: '4 acre/h',
    us: style('acre/h', 0.1, { label: 'acres/h' }),
    metric: style('ha/h', 0.01),
  },
  massRate: {
    dims: [0, 1, -1, 0, 0, 0],
    means: 'a mass moved in an hour',
    example: '40 ton/h',
    us: style('ton/h', 1, { label: 'tons/h' }),
    metric: style('t/h', 1),
  },
  pull: {
    dims: dims('N'),
    means: 'a pull',
    example: '600 lbf',
    us: style('lbf', 10),
    metric: style('kN', 0.1),
  },
  draft: {
    dims: [0, 1, -2, 0, 0, 0],
    means: 'a pull for each part of a width',
    example: '60 lbf/ft',
    us: style('lbf/ft', 1),
    metric: style('kN/m', 0.1),
  },
  speed: {
    dims: dims('mph'),
    means: 'a speed',
    example: '4 mph',
    us: style('mph', 0.1),
    metric: style('km/h', 0.1),
  },
  wind: {
    dims: dims('mph'),
    means: 'a wind speed',
    example: '5 mph',
    us: style('mph', 1),
    metric: style('km/h', 1),
  },
  waterFlow: {
    dims: dims('gpm'),
    means: 'a flow of water',
    example: '120 gal/min',
    us: style('gal/min', 1),
    metric: style('L/min', 1),
  },
  rainRate: {
    dims: dims('mph'),
    means: 'a rate of rain',
    example: '1.5 in/h',
    us: style('in/h', 0.1),
    metric: style('mm/h', 1),
  },
  unitWeight: {
    dims: dims('pcf'),
    means: 'a unit weight',
    example: '110 lb/ft3',
    us: style('lb/ft3', 1, { label: 'lb/ft³' }),
    metric: style('kg/m3', 10, { label: 'kg/m³' }),
  },
  laborRate: {
    dims: [-3, 0, 1, 0, 0, 0],
    means: 'work for each part of a volume',
    example: '0.5 h/ft3',
    us: style('h/ft3', 0.1, { label: 'h/ft³' }),
    metric: style('h/m3', 1, { label: 'h/m³' }),
  },
  vapor: {
    dims: dims('kPa'),
    means: 'a vapor pressure',
    example: '1.8 kPa',
    ...both(style('kPa', 0.001)),
  },
  radiation: {
    dims: [0, 1, -2, 0, 0, 0],
    means: 'energy on an area in a day',
    example: '20 MJ/m2',
    ...both(style('MJ/m2', 0.01, { label: 'MJ/m²' })),
  },
  dailyWater: {
    dims: dims('mph'),
    means: 'water lost in a day',
    example: '0.25 in/day',
    us: style('in/day', 0.01),
    metric: style('mm/day', 0.1),
  },
  hourlyWater: {
    dims: dims('mph'),
    means: 'water lost in an hour',
    example: '0.03 in/h',
    us: style('in/h', 0.001),
    metric: style('mm/h', 0.01),
  },
  clock: {
    dims: dims('s'),
    means: 'a time of day',
    example: '1:30 PM',
    ...both(style('min', 1, { form: 'clock' })),
  },
  quarterClock: {
    dims: dims('s'),
    means: 'a time of day',
    example: '1:30 PM',
    ...both(style('min', 15, { form: 'clock' })),
  },
  date: {
    dims: [0, 0, 0, 0, 0, 0],
    means: 'a date',
    example: '2027-08-03',
    ...both(style('', 1, { form: 'date' })),
  },
  soundLevel: {
    dims: [0, 0, 0, 0, 0, 0],
    means: 'a sound level',
    example: '92 dB',
    ...both(style('dB', 1, { label: 'dBA' })),
  },
  voltage: { dims: dims('V'), means: 'a voltage', example: '350 kV', ...both(style('kV', 10)) },
  dustLevel: {
    dims: dims('pcf'),
    means: 'dust in the air',
    example: '100 ug/m3',
    ...both(style('ug/m3', 5, { label: 'µg/m³' })),
  },
  handMass: {
    dims: dims('kg'),
    means: 'a load that people lift',
    example: '50 lb',
    us: style('lb', 1),
    metric: style('kg', 0.5),
  },
  pressure: {
    dims: dims('psi'),
    means: 'a pressure',
    example: '60 psi',
    us: style('psi', 1),
    metric: style('kPa', 5),
  },
  power: {
    dims: dims('hp'),
    means: 'a power',
    example: '50 hp',
    us: style('hp', 1),
    metric: style('kW', 1),
  },
  fuelRate: {
    dims: dims('gpm'),
    means: 'fuel used in an hour',
    example: '3 gal/h',
    us: style('gal/h', 0.1),
    metric: style('L/h', 0.5),
  },
  fuelVolume: {
    dims: [3, 0, 0, 0, 0, 0],
    means: 'a volume of fuel',
    example: '20 gal',
    us: style('gal', 1, { mode: 'up' }),
    metric: style('L', 5, { mode: 'up' }),
  },
  share: { dims: [0, 0, 0, 0, 0, 0], means: 'a share', example: '30 %', ...both(style('%', 1)) },
  fineShare: {
    dims: [0, 0, 0, 0, 0, 0],
    means: 'a slope or share',
    example: '2.5 %',
    ...both(style('%', 0.1)),
  },
  closeShare: {
    dims: [0, 0, 0, 0, 0, 0],
    means: 'a small share',
    example: '0.25 %',
    ...both(style('%', 0.01)),
  },
  ratio: {
    dims: [0, 0, 0, 0, 0, 0],
    means: 'a plain number',
    example: '0.85',
    ...both(style('', 0.01)),
  },
  tenths: {
    dims: [0, 0, 0, 0, 0, 0],
    means: 'a plain number',
    example: '1.5',
    ...both(style('', 0.1)),
  },
  count: { dims: [0, 0, 0, 0, 0, 0], means: 'a whole number', example: '3', ...both(style('', 1)) },
  whole: {
    dims: [0, 0, 0, 0, 0, 0],
    means: 'a whole number, rounded up',
    example: '3',
    ...both(style('', 1, { mode: 'up' })),
  },
  angle: { dims: dims('rad'), means: 'an angle', example: '30 deg', ...both(style('°', 1)) },
  fineAngle: { dims: dims('rad'), means: 'an angle', example: '1.2 deg', ...both(style('°', 0.1)) },
  temperature: {
    dims: dims('K'),
    means: 'a temperature',
    example: '85 °F',
    us: style('°F', 1),
    metric: style('°C', 1),
  },
  money: {
    dims: dims('money'),
    means: 'an amount of money',
    example: '$450',
    ...both(style('money', 5, { form: 'money' })),
  },
  hourlyRate: {
    dims: [0, 0, -1, 0, 1, 0],
    means: 'a price per hour',
    example: '$85/h',
    ...both(style('money/h', 1, { form: 'money' })),
  },
  massPrice: {
    dims: [0, -1, 0, 0, 1, 0],
    means: 'a price by weight',
    example: '$18/ton',
    us: style('money/ton', 0.5, { form: 'money' }),
    metric: style('money/t', 0.5, { form: 'money' }),
  },
  volumePrice: {
    dims: [-3, 0, 0, 0, 1, 0],
    means: 'a price by volume',
    example: '$4/gal',
    us: style('money/gal', 0.01, { form: 'money' }),
    metric: style('money/L', 0.01, { form: 'money' }),
  },
} as const satisfies Readonly<Record<string, Kind>>

export type KindName = keyof typeof kinds

export const kindOf = (name: KindName): Kind => kinds[name]
