import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { evaporationDay } from '../../../src/compute/weather/bare-soil.ts'
import {
  depletionAfter,
  dryingTime,
  layerDrying,
} from '../../../src/compute/weather/layer-drying.ts'
import { evapotranspiration } from '../../../src/compute/weather/reference-evapotranspiration.ts'
import { weatherRecord } from '../../../src/compute/weather/weather-record.ts'
import { observedEvapotranspiration, weatherRun } from '../../../src/compute/weather/weather-run.ts'
import type { WeatherDay } from '../../../src/model/weather.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

const place = { latitude: 0.71, elevation: 270, windHeight: 10 }
const weather = (more: Partial<WeatherDay> = {}): WeatherDay => ({
  date: '2027-07-06',
  high: 302,
  low: 289,
  rain: 0,
  humidity: 0.7,
  wind: 3,
  sun: 32_000,
  ...more,
})

describe('how fast a layer dries', () => {
  it('agrees with FAO-56 chapter 7 taken in ever shorter steps', () => {
    // Twelve millimeters in all, five of them readily, 6 mm a day from the wet surface; a
    // thousandth of a day a step.
    const steps = (days: number): number => {
      let depleted = 0
      for (let i = 0; i < days * 1000; i++)
        depleted = evaporationDay({
          start: depleted,
          readily: 5,
          total: 12,
          kcMax: 1.2,
          kcb: 0,
          exposed: 1,
          wetted: 1,
          eto: 5e-3,
        }).end
      return depleted
    }
    for (const lost of [3, 5, 8, 11]) {
      expect(steps(dryingTime(lost, 12, 5, 6))).toBeCloseTo(lost, 1)
      expect(depletionAfter(0, 12, 5, 6, dryingTime(lost, 12, 5, 6))).toBeCloseTo(lost, 9)
      expect(depletionAfter(depletionAfter(2, 12, 5, 6, 0.4), 12, 5, 6, 0.6)).toBeCloseTo(
        depletionAfter(2, 12, 5, 6, 1),
        9,
      )
    }
  })

  const layer = {
    depth: 0.032,
    unitWeight: 1670,
    held: 0.14,
    target: 0.08,
    dusty: 0.03,
    share: 0.5,
    rate: 5e-3 / 86_400,
  }

  it('takes longer when it is deeper, and half as long where the air draws twice as much', () => {
    fc.assert(
      fc.property(whole(10, 100), whole(1, 10), (mm, eto) => {
        const at = (x: object) =>
          layerDrying.compute({ ...layer, depth: mm / 1000, rate: (eto * 1e-3) / 86_400, ...x })
        expect(numberOf(at({ depth: (mm + 5) / 1000 }).dust)).toBeGreaterThan(numberOf(at({}).dust))
        expect(numberOf(at({ rate: (2 * eto * 1e-3) / 86_400 }).dust)).toBeCloseTo(
          numberOf(at({}).dust) / 2,
          3,
        )
      }),
      FEW,
    )
  })

  it('refuses moistures that are out of order', () => {
    const found = layerDrying.compute({ ...layer, target: 0.02 })
    expectRefused([found.workable, found.dust], /does not lie between/)
  })
})

describe('a record of weather', () => {
  it('draws the same from a day as the figure of the fair month does from the same day', () => {
    const { rate } = evapotranspiration.compute({
      tmax: 302,
      tmin: 289,
      latitude: place.latitude,
      day: 187,
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

  const layer = {
    total: 0.007,
    readily: 0.0035,
    wanted: 0.002,
    runoff: (rain: number) => Math.max(0, rain - 0.01),
  }

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
        let before = layer.wanted
        for (const d of run) {
          const soaked = Math.max(0, before - (d.day.rain - d.runs))
          expect(d.depleted).toBeCloseTo(soaked + d.lost, 12)
          expect(d.depleted).toBeGreaterThanOrEqual(0)
          expect(d.depleted).toBeLessThanOrEqual(layer.total)
          before = d.depleted
        }
      }),
      FEW,
    )
  })

  it('leaves less to add on the evening after a soaking than after a dry day, and more with every dry day', () => {
    const input = {
      depth: 0.032,
      unitWeight: 1670,
      held: 0.14,
      target: 0.08,
      dusty: 0.03,
      share: 0.5,
      curve: 85,
      ...place,
      area: 17_000,
    }
    const short = (...days: WeatherDay[]): number =>
      numberOf(weatherRecord(days).compute(input).short)
    expect(short(weather({ rain: 0.05 }))).toBeLessThan(short(weather()))
    expect(short(weather(), weather({ date: '2027-07-07' }))).toBeGreaterThan(short(weather()))
  })
})
