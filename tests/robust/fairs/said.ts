import type { Chance } from '../chance.ts'

export type Entry = { readonly [key: string]: unknown }

type Quantity = (least: number, most: number) => string

/** Values between two ends, in US measures, written in the units of a facility, sometimes as people say them. */
export type Said = {
  readonly number: (least: number, most: number, decimals: number) => number
  /** Entries that are there so often; else none. */
  readonly often: (share: number, entries: () => Entry) => Entry
  /** Feet. */
  readonly length: Quantity
  /** Inches. */
  readonly depth: Quantity
  /** Gallons. */
  readonly volume: Quantity
  /** Gallons a minute. */
  readonly flow: Quantity
  /** Miles an hour. */
  readonly speed: Quantity
  /** Short tons. */
  readonly mass: Quantity
  /** Pounds in a cubic foot. */
  readonly unitWeight: Quantity
  readonly price: (least: number, most: number, of: 'ton' | 'gal') => string
}

const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals))

/** A quantity in one of the two systems: unit, what one of the US unit is of it, decimals. */
type Way = readonly [unit: string, factor: number, decimals: number]

const ways = {
  length: { us: ['ft', 1, 1], metric: ['m', 0.3048, 2] },
  depth: { us: ['in', 1, 2], metric: ['mm', 25.4, 0] },
  volume: { us: ['gal', 1, 0], metric: ['L', 3.785411784, 0] },
  flow: { us: ['gal/min', 1, 0], metric: ['L/min', 3.785411784, 0] },
  speed: { us: ['mph', 1, 1], metric: ['km/h', 1.609344, 1] },
  mass: { us: ['tons', 1, 1], metric: ['t', 0.90718474, 1] },
  unitWeight: { us: ['lb/ft3', 1, 0], metric: ['kg/m3', 16.01846337, 0] },
} as const satisfies Record<string, Record<'us' | 'metric', Way>>

/** @param units The system in which nearly all is written; some is in the other one. */
export function saying(chance: Chance, units: 'us' | 'metric'): Said {
  const number: Said['number'] = (least, most, decimals) =>
    rounded(least + ((most - least) * chance.below(10_001)) / 10_000, decimals)
  const quantity =
    (kind: keyof typeof ways): Quantity =>
    (least, most) => {
      const other = units === 'us' ? 'metric' : 'us'
      const [unit, factor, decimals] = ways[kind][chance.happens(0.05) ? other : units]
      const text = `${number(least * factor, most * factor, decimals)} ${unit}`
      return chance.happens(0.06) ? `about ${text}` : text
    }
  return {
    number,
    often: (share, entries) => (chance.happens(share) ? entries() : {}),
    length: quantity('length'),
    depth: quantity('depth'),
    volume: quantity('volume'),
    flow: quantity('flow'),
    speed: quantity('speed'),
    mass: quantity('mass'),
    unitWeight: quantity('unitWeight'),
    price: (least, most, of) => {
      const isUs = units === 'us'
      const [unit, factor] =
        of === 'ton' ? (isUs ? ['ton', 1] : ['t', 1.1]) : isUs ? ['gal', 1] : ['L', 0.264]
      return `$${number(least * factor, most * factor, 4)}/${unit}`
    },
  }
}
