import geographicLib from 'geographiclib-geodesic'
import file from '../../shared/published/geodesy.cases.json' with { type: 'json' }
import { closedLine, distanceBetween } from '../../src/model/geodesy.ts'
import { type Answers, type Case, type Inputs, type Runner, si } from './case.ts'
import { checkCases } from './check-cases.ts'

const { WGS84 } = geographicLib.Geodesic
const pairs = (x: Inputs) =>
  x
    .words('points')
    .map((w) => w.split(',').map(Number))
    .map(([latitude = 0, longitude = 0]) => ({ latitude, longitude }))

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

const runners: Readonly<Record<string, Runner>> = {
  inverse: (x) => ({
    value: distanceBetween(
      { latitude: x.n('lat1'), longitude: x.n('lon1') },
      { latitude: x.n('lat2'), longitude: x.n('lon2') },
    ),
  }),
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
}

checkCases(file as unknown as readonly Case[], runners)
