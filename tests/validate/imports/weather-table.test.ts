import { describe, expect, it } from 'vitest'
import { readWeather } from '../../../src/validate/imports/weather-table.ts'
import { badTables, placesOf } from '../../support/bad-input.ts'

const check = (...lines: string[]) =>
  readWeather({ path: 'weather.csv', text: lines.join('\n') }, { latitude: 41, date: '2027-06-14' })

const { cases } = await badTables('weather')
const head = 'date,high (°F),low (°F),rain (in),wind (mph)'

describe('a weather record', () => {
  it('becomes days in SI, the oldest first; what was not observed stays open', () => {
    const { value, problems } = check(
      head,
      '2027-06-02,80,60,0.10,',
      '2027-06-01,25 °C,15 °C,2 mm,10',
    )
    expect(problems).toEqual([])
    expect(value?.map((d) => d.date)).toEqual(['2027-06-01', '2027-06-02'])
    expect(value?.[0]?.high).toBeCloseTo(298.15, 9)
    expect(value?.[1]?.rain).toBeCloseTo(0.00254, 9)
    expect(value?.map((d) => d.wind === undefined)).toEqual([false, true])
  })

  it.each(cases.map((c) => [c.name, c] as const))(
    'is refused with %s',
    (_, { text, expect: places }) => {
      const { value, problems } = check(text)
      expect(value).toBeUndefined()
      expect(placesOf(problems)).toEqual([...places].sort())
    },
  )
})
