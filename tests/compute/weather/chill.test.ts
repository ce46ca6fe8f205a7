import { expect, it } from 'vitest'
import { chill } from '../../../src/compute/weather/chill.ts'
import { numberOf } from '../support/answers.ts'
import { MPH } from '../support/realistic.ts'

const kelvin = (f: number): number => ((f + 459.67) * 5) / 9

it('feels like 13 °F at 25 °F in 15 mph of wind, by the chart of the weather service', () => {
  const { felt } = chill.compute({ air: kelvin(25), wind: 15 * MPH })
  expect((numberOf(felt) * 9) / 5 - 459.67).toBeCloseTo(12.6, 1)
})

it('refuses in warm air and in calm', () => {
  expect(chill.compute({ air: kelvin(60), wind: 15 * MPH }).felt).toEqual({ refused: 'not-cold' })
  expect(chill.compute({ air: kelvin(25), wind: MPH }).felt).toEqual({ refused: 'no-wind' })
})
