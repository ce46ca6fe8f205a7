import { describe, expect, it } from 'vitest'
import { composeDryingCurve } from '../../../src/compose/charts/drying-curve.ts'
import { contextFor, halfMile } from '../support/context.ts'

const summer = `${halfMile.replace('town: Nowhere', 'town: Nowhere, latitude: 41, longitude: -83, elevation: 800 ft')}race-days: [{ date: 2027-08-03, first-post: "13:00", races: 10 }]
climate: [{ month: 8, tmax: 84 °F, tmin: 62 °F, humidity: 60 %, wind: 6 mph, sun: 8 h }]
`

describe('the drying of the cushion', () => {
  it('falls from what it holds to what dusts, and passes what is wanted when the worksheet says so', async () => {
    const curve = composeDryingCurve(await contextFor(summer))
    if (!curve) throw new Error('no curve')
    const { points, held, target, dusty, workable, dust } = curve
    expect(points[0]).toEqual({ time: 0, moisture: held })
    const moistures = points.map((p) => p.moisture)
    expect(moistures).toEqual([...moistures].sort((a, b) => b - a))
    const at = (time: number): number => {
      const i = points.findIndex((p) => p.time >= time)
      const [a, b] = [points[i - 1], points[i]]
      if (!a || !b) throw new Error(`no point about ${time}`)
      return a.moisture + ((b.moisture - a.moisture) * (time - a.time)) / (b.time - a.time)
    }
    expect(at(workable)).toBeCloseTo(target, 3)
    expect(at(dust)).toBeCloseTo(dusty, 3)
  })

  it('is not drawn where no climate is given', async () => {
    expect(composeDryingCurve(await contextFor(halfMile))).toBeUndefined()
  })
})
