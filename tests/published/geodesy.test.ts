import geographicLib from 'geographiclib-geodesic'
import { afterAll, describe, expect, it } from 'vitest'
import file from '../../shared/published/geodesy.cases.json' with { type: 'json' }
import { closedLine, distanceBetween } from '../../src/model/geodesy.ts'
import {
  type Answers,
  type Case,
  compare,
  type Inputs,
  inputsOf,
  printCounts,
  si,
  titleOf,
} from './earth/case.ts'

const cases = file as unknown as readonly (Case & { readonly fn: string })[]
const { WGS84 } = geographicLib.Geodesic
const pairs = (x: Inputs) =>
  x
    .words('points')
    .map((w) => w.split(',').map(Number))
    .map(([latitude = 0, longitude = 0]) => ({ latitude, longitude }))

/** Length of an oval drawn with chords over that of the oval: how much the corners cut off. */
const chordLoss = (chords: number): number =>
  1 - (chords / (Math.PI / 2)) * Math.sin(Math.PI / 2 / chords)

/** An oval set out from its middle by distance and direction, each turn with `n` chords. */
function drawn(x: Inputs): Answers {
  const [s, r, n] = [x.si('S_ft', 'ft'), x.si('R_ft', 'ft'), x.n('n')]
  const turn = (side: 1 | -1): (readonly [number, number])[] =>
    Array.from({ length: n + 1 }, (_, i) => {
      const a = -Math.PI / 2 + (Math.PI * i) / n
      return [side * (s / 2 + r * Math.cos(a)), side * r * Math.sin(a)] as const
    })
  const points = [...turn(1), ...turn(-1)].map(([east, north]) => {
    const to = WGS84.Direct(
      x.n('lat0'),
      x.n('lon0'),
      (Math.atan2(east, north) * 180) / Math.PI,
      Math.hypot(east, north),
    )
    return { latitude: to.lat2 ?? 0, longitude: to.lon2 ?? 0 }
  })
  const { length, area } = closedLine(points)
  return { perimeter_ft: length / si(1, 'ft'), area_ft2: area / si(1, 'ft2') }
}

const runners: Readonly<Record<string, (x: Inputs) => Answers>> = {
  inverse: (x) => ({
    value: distanceBetween(
      { latitude: x.n('lat1'), longitude: x.n('lon1') },
      { latitude: x.n('lat2'), longitude: x.n('lon2') },
    ),
  }),
  direct: (x) => {
    const to = WGS84.Direct(x.n('lat1'), x.n('lon1'), x.n('azi1'), x.n('s12_m'))
    return { lat2: to.lat2, lon2: to.lon2, azi2: to.azi2 }
  },
  polygon: (x) => {
    const { length, area } = closedLine(pairs(x))
    return { perimeter_m: length, area_m2: area }
  },
  step: (x) => {
    const from = { latitude: x.n('lat'), longitude: x.n('lon') }
    return {
      north_m: distanceBetween(from, { ...from, latitude: from.latitude + x.n('step_deg') }),
      east_m: distanceBetween(from, { ...from, longitude: from.longitude + x.n('step_deg') }),
    }
  },
  drawn,
  chords: (x) => ({ value: chordLoss(x.n('n')) }),
}

describe('published checks, geodesics and rail lines', () => {
  it.each(cases.map((c) => [titleOf(c), c] as const))('%s', (_title, c) => {
    const run = runners[c.fn]
    if (!run) throw new Error(`nothing here works out ${c.fn}`)
    compare(c, run(inputsOf(c)))
  })

  it('works out no formula that no case asks for', () => {
    const asked = new Set(cases.map((c) => c.fn))
    expect(Object.keys(runners).filter((name) => !asked.has(name))).toEqual([])
  })
})

afterAll(() => printCounts(cases))
