import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { evapotranspiration } from '../../../src/compute/weather/reference-evapotranspiration.ts'
import { observedEvapotranspiration, weatherRun } from '../../../src/compute/weather/weather-run.ts'
import { dayNumber } from '../../../src/model/day.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

import { place, weather } from '../support/weather.ts'

describe('a record of weather', () => {
  const layer = {
    total: 0.007,
    readily: 0.0035,
    wanted: 0.002,
    aboveHeld: 0.004,
    base: 0.003,
    hollows: 0.002,
    draw: 1.15,
  }

  it('draws the same from a day as the figure of the fair month does from the same day', () => {
    const { rate } = evapotranspiration.compute({
      tmax: 302,
      tmin: 289,
      latitude: place.latitude,
      day: dayNumber(weather().date),
      humidity: 0.7,
      wind: 3,
      height: 10,
      sun: 32_000,
      elevation: 270,
    })
    expect(observedEvapotranspiration(weather(), place) / 1000 / 86_400).toBeCloseTo(
      numberOf(rate),
      15,
    )
  })

  it('falls back on temperatures where nothing else was observed', () => {
    const rough = observedEvapotranspiration(
      weather({ humidity: undefined, wind: undefined, sun: undefined }),
      place,
    )
    expect(rough / observedEvapotranspiration(weather(), place)).toBeGreaterThan(0.6)
    expect(rough / observedEvapotranspiration(weather(), place)).toBeLessThan(1.6)
  })

  it('leaves the layer wetter than it holds on the evening of a soaking', () => {
    const [first] = weatherRun([weather({ rain: 0.04 })], place, { ...layer, base: 0 })
    expect(first?.depleted).toBeLessThan(0)
    expect(first?.runs).toBeGreaterThan(0.03)
  })

  it('accounts for every drop, and never holds more than there is room for', () => {
    fc.assert(
      fc.property(fc.array(whole(0, 30), { minLength: 1, maxLength: 12 }), (rains) => {
        const run = weatherRun(
          rains.map((mm, i) =>
            weather({ date: `2027-07-${String(i + 1).padStart(2, '0')}`, rain: mm / 1000 }),
          ),
          place,
          layer,
        )
        let [before, stood, base] = [layer.wanted, 0, layer.base]
        for (const d of run) {
          // What came and what was there is what went and what is there.
          const kept = before - d.depleted + d.stands - stood
          expect(d.lost + d.runs + d.base + kept).toBeCloseTo(d.day.rain, 12)
          expect(d.depleted).toBeGreaterThanOrEqual(-layer.aboveHeld - 1e-12)
          expect(d.depleted).toBeLessThanOrEqual(layer.total)
          expect(d.stands).toBeLessThanOrEqual(layer.hollows + 1e-12)
          base -= d.base
          expect(base).toBeGreaterThanOrEqual(-1e-12)
          ;[before, stood] = [d.depleted, d.stands]
        }
      }),
      FEW,
    )
  })
})
