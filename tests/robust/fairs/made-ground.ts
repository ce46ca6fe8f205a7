import type { Chance } from '../chance.ts'
import type { Entry, Said } from './said.ts'

/** Where a clock and a sun belong together: latitudes from the far south to the far north. */
const places = [
  [-54.8, -68.3, 'America/Argentina/Ushuaia'],
  [-45.9, 170.5, 'Pacific/Auckland'],
  [-33.9, 151.2, 'Australia/Sydney'],
  [-12.5, 130.8, 'Australia/Darwin'],
  [-1.3, 36.8, 'Africa/Nairobi'],
  [0.5, 103.9, 'Asia/Singapore'],
  [21.3, -157.9, 'Pacific/Honolulu'],
  [28.1, -82.4, 'America/New_York'],
  [35.2, -101.8, 'America/Chicago'],
  [40.8, -89.1, 'America/Chicago'],
  [44.3, -80.4, 'America/Toronto'],
  [47.6, -52.7, 'America/St_Johns'],
  [53.5, -113.5, 'America/Edmonton'],
  [59.9, 30.3, 'Europe/Moscow'],
  [61.2, -149.9, 'America/Anchorage'],
  [60.7, -135.1, 'America/Whitehorse'],
  [63.4, 10.4, 'Europe/Oslo'],
  [64.8, -147.7, 'America/Anchorage'],
  [65.9, -18.1, 'Atlantic/Reykjavik'],
] as const

export function placeOf(chance: Chance): Entry & { readonly latitude: number } {
  const [latitude, longitude, zone] = chance.oneOf(places)
  return {
    town: 'Nowhere',
    latitude,
    longitude,
    ...(chance.happens(0.6) ? { elevation: `${chance.below(1500)} m` } : {}),
    'time-zone': zone,
  }
}

/** Laps from a fifth of a mile to a mile, and how their straights and turns share them. */
export function ovalOf(chance: Chance, { often, length, number }: Said): Entry {
  const lap = chance.oneOf([1100, 1320, 1760, 2640, 2640, 2640, 3300, 4400, 5280])
  const straight = Math.round(lap * number(0.15, 0.3, 3))
  const radius = (lap - 2 * straight) / (2 * Math.PI)
  const width = Math.min(radius * 0.9, number(24, 100, 0))
  const feet = (value: number): string => `"${value.toFixed(1)} ft"`.replaceAll('"', '')
  const shape = chance.happens(0.5)
    ? { lap: feet(lap), straight: feet(straight) }
    : { straight: feet(straight), radius: feet(radius) }
  return {
    ...shape,
    ...often(0.4, () => ({ 'measuring-offset': feet(number(0, 6, 0)) })),
    width: {
      straights: feet(width),
      turns: feet(Math.min(radius * 0.95, width + number(0, 12, 0))),
    },
    ...often(0.6, () => ({
      'cross-fall': { straights: `${number(0.5, 4, 1)} %`, turns: `${number(1, 12, 1)} %` },
    })),
    rail: chance.oneOf(['pylons', 'hub-rail']),
    direction: chance.oneOf(['counterclockwise', 'clockwise']),
    ...often(0.4, () => ({ 'home-bearing': chance.below(361) })),
    ...often(0.6, () => ({
      marks: [
        { kind: 'finish', name: 'Finish', station: length(0, lap * 0.9) },
        {
          kind: 'gate',
          name: 'Gate A',
          station: length(0, lap * 0.9),
          ...often(0.5, () => ({ machines: true })),
        },
        ...(chance.happens(0.5)
          ? [{ kind: 'stockpile', name: 'Stockpile', station: length(0, lap * 0.9) }]
          : []),
        ...(chance.happens(0.5)
          ? [{ kind: 'water', name: 'Hydrant', station: length(0, lap * 0.9) }]
          : []),
        ...(chance.happens(0.5)
          ? [{ kind: 'drain', name: 'Drain 1', station: length(0, lap * 0.9), side: 'rail' }]
          : []),
      ],
    })),
  }
}

export function cushionOf(chance: Chance, { often, depth, number, unitWeight }: Said): Entry {
  return {
    cushion: {
      material: chance.oneOf(['stone-dust', 'clay']),
      ...often(0.7, () => ({ depth: { target: depth(0.75, 4) } })),
      ...often(0.4, () => ({
        'unit-weight': {
          loose: unitWeight(70, 85),
          worked: unitWeight(88, 105),
          compacted: unitWeight(110, 140),
        },
      })),
      ...often(0.4, () => ({ moisture: { target: `${number(5, 14, 1)} %` } })),
      ...often(0.3, () => ({ grit: { target: `${number(8, 45, 0)} %` } })),
    },
    ...often(0.4, () => ({ base: { depth: depth(3, 14) } })),
  }
}
