import { describe, expect, it } from 'vitest'
import { heat, heatRisk } from '../../../src/compute/weather/heat.ts'
import { numberOf } from '../support/answers.ts'

describe('heat', () => {
  it("agrees with the weather service's chart: 96 °F at 50 % feels like 108 °F", () => {
    const { index } = heat.compute({ temperature: (96 + 459.67) / 1.8, humidity: 0.5 })
    expect(Math.round(numberOf(index) * 1.8 - 459.67)).toBe(108)
  })

  it('is a higher risk at the ends of the bands only', () => {
    expect([80, 90.9, 91, 103, 103.1, 115, 115.1].map(heatRisk)).toEqual([1, 1, 2, 2, 3, 3, 4])
  })
})
