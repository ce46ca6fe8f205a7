import type { Value } from '../edit/written.ts'
import { foot } from '../model/quantity/units.ts'
import type { Path } from '../read/read-yaml.ts'
import type { StatedShape } from '../validate/facility/check-oval.ts'

/** Something that nobody has said and without which nothing works. */
export type StandIn = { readonly path: Path; readonly value: Value }

/** What a fair and its town are called before anybody has said it. */
export type Unnamed = { readonly fair: string; readonly town: string }

/** The dimensions of an oval of which two give the third. */
export const dimensions = ['lap', 'straight', 'radius'] as const

/** The half mile that most fairs race on, m. */
const halfMile = { lap: 2640 * foot, straight: 600 * foot }

/** The part of a lap that one straight is. */
const share = halfMile.straight / halfMile.lap

const inUnits = (m: number, metric: boolean): string =>
  metric ? `${Math.round(m)} m` : `${Math.round(m / foot)} ft`

type Given = {
  readonly metric: boolean
  /** What is stated of the oval, m; nothing before the file can be read as far as that. */
  readonly shape: StatedShape | undefined
}

/** The oval with the proportions of most, round what is stated of it. */
function ovalFor({ shape, metric }: Given): readonly StandIn[] {
  const stated = (key: 'lap' | 'straight', m: number): StandIn => ({
    path: ['oval', key],
    value: inUnits(m, metric),
  })
  const { lap, straight, radius, offset = 0 } = shape ?? {}
  if (lap !== undefined) return [stated('straight', lap * share)]
  if (straight !== undefined) return [stated('lap', straight / share)]
  if (radius !== undefined)
    return [stated('lap', (2 * Math.PI * (radius + offset)) / (1 - 2 * share))]
  return [stated('lap', halfMile.lap), stated('straight', halfMile.straight)]
}

/** Everything that stands in where it is missing. */
export const standInsFor = (given: Given, unnamed: Unnamed): readonly StandIn[] => [
  { path: ['id'], value: 'our-track' },
  { path: ['name'], value: unnamed.fair },
  { path: ['place', 'town'], value: unnamed.town },
  { path: ['units'], value: 'us' },
  { path: ['paper'], value: given.metric ? 'a4' : 'letter' },
  ...ovalFor(given),
  { path: ['cushion', 'material'], value: 'stone-dust' },
]
