import { stringify } from 'yaml'
import type { Chance } from '../chance.ts'
import { cushionOf, ovalOf, placeOf } from './made-ground.ts'
import { equipmentOf } from './made-machines.ts'
import { type Entry, type Said, saying } from './said.ts'

export type Fair = Entry

const day = (year: number, month: number, date: number): string =>
  new Date(Date.UTC(year, month - 1, date)).toISOString().slice(0, 10)

/** Day, evening, late evening and night: first races as fairs have them, and as hardly any has. */
const posts = [
  '10:00',
  '12:30',
  '13:00',
  '13:30',
  '16:00',
  '18:00',
  '18:30',
  '19:30',
  '21:00',
  '22:30',
]

function raceDaysOf(chance: Chance, { often, number }: Said): readonly Entry[] {
  const count = chance.oneOf([1, 1, 2, 3, 4, 7, 14])
  const first = chance.below(150)
  const gap = chance.oneOf([1, 1, 1, 2, 7])
  return Array.from({ length: count }, (_, i) => ({
    date: day(2027, 6, 15 + first + i * gap),
    'first-post': chance.oneOf(posts),
    races: 1 + chance.below(16),
    ...often(0.7, () => ({ interval: `${number(12, 40, 0)} min` })),
    ...often(0.2, () => ({
      'break-every': 2 + chance.below(6),
      break: `${number(30, 90, 0)} min`,
    })),
  }))
}

const climateOf = (chance: Chance, { number }: Said, south: boolean): readonly Entry[] =>
  [4, 5, 6, 7, 8, 9, 10, 11].flatMap((month) => {
    if (chance.happens(0.15)) return []
    const isWarm = south ? month > 9 || month < 5 : month > 4 && month < 10
    const high = number(isWarm ? 12 : 2, isWarm ? 38 : 20, 0)
    return {
      month,
      tmax: `${high} °C`,
      tmin: `${high - number(4, 16, 0)} °C`,
      humidity: `${number(25, 95, 0)} %`,
      wind: `${number(2, 30, 0)} km/h`,
      sun: `${number(2, isWarm ? 11 : 8, 1)} h`,
      rain: `${number(0, 220, 0)} mm`,
    }
  })

const people = (chance: Chance) => ({
  contacts: [
    { role: 'superintendent', name: 'Ada Moss', phone: '555-7701' },
    ...(chance.happens(0.5)
      ? [{ role: 'ambulance', name: 'County ambulance', phone: '555-7710' }]
      : []),
  ],
  emergency: { number: '911', address: '1 Fair Road', 'stops-racing': ['superintendent'] },
})

function moneyOf({ often, price, mass, number }: Said): Entry {
  return {
    ...often(0.6, () => ({
      prices: {
        ...often(0.8, () => ({ material: price(6, 90, 'ton') })),
        ...often(0.6, () => ({ water: price(0.0005, 0.03, 'gal') })),
        ...often(0.8, () => ({ fuel: price(2, 12, 'gal') })),
        ...often(0.8, () => ({ labor: `$${number(8, 60, 0)}/h` })),
        ...often(0.4, () => ({ budget: `$${number(200, 90_000, 0)}` })),
      },
    })),
    ...often(0.5, () => ({
      delivery: {
        ...often(0.7, () => ({ load: mass(6, 32) })),
        ...often(0.7, () => ({ 'lead-time': `${number(1, 45, 0)} days` })),
      },
    })),
  }
}

function waterOf(chance: Chance, { often, flow, volume, number }: Said): Entry {
  return often(0.8, () => ({
    water: {
      ...often(0.8, () => ({ 'fill-flow': flow(20, 900) })),
      ...often(0.4, () => ({ 'fill-points': 1 + chance.below(4) })),
      ...often(0.7, () => ({ storage: volume(0, 1_500_000) })),
      ...often(0.6, () => ({ recharge: flow(0, 300) })),
      ...often(0.5, () => ({ hours: `${number(2, 24, 0)} h` })),
    },
  }))
}

function measurementsOf({ often, depth, number }: Said): readonly Entry[] {
  const of = (name: string, value: () => string) =>
    Object.values(
      often(0.5, () => ({ m: { of: name, value: value(), date: '2027-06-01', by: 'A. Moss' } })),
    )
  return [
    ...of('cushion.depth.found', () => depth(0.4, 5)),
    ...of('cushion.moisture.found', () => `${number(2, 18, 1)} %`),
    ...of('rail-ridge.height', () => depth(0, 3)),
    ...of('creep.width', () => depth(0.6, 10)),
    ...of('creep.height', () => depth(0.2, 3)),
  ] as readonly Entry[]
}

/**
 * A facility that nobody has, within what a facility file takes: small and large ovals, far north and
 * south, from no machine at all to twenty, races by day and night.
 */
export function madeFair(chance: Chance): Fair {
  const units = chance.oneOf(['us', 'metric'] as const)
  const said = saying(chance, units)
  const place = placeOf(chance)
  const measurements = measurementsOf(said)
  const climate = climateOf(chance, said, place.latitude < 0)
  const days = raceDaysOf(chance, said)
  return {
    id: 'made-up',
    name: 'Made-up Fair',
    place,
    units,
    paper: units === 'us' ? 'letter' : 'a4',
    'as-of': '2027-06-14',
    revision: 1,
    oval: ovalOf(chance, said),
    ...cushionOf(chance, said),
    equipment: equipmentOf(
      chance,
      said,
      days.map(({ date }) => String(date)),
    ),
    ...said.often(0.85, () => ({
      crew: {
        people: 1 + chance.below(12),
        ...said.often(0.7, () => ({ 'race-day': 1 + chance.below(24) })),
      },
    })),
    ...waterOf(chance, said),
    ...moneyOf(said),
    ...(climate.length > 0 && chance.happens(0.6) ? { climate } : {}),
    'race-days': days,
    ...people(chance),
    ...(measurements.length > 0 ? { measurements } : {}),
    ...said.often(0.3, () => ({ lights: chance.happens(0.6) })),
  }
}

export const textOfFair = (fair: Fair): string => stringify(fair, { lineWidth: 0 })
