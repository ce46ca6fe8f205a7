import { describe, expect, it } from 'vitest'
import { readWeather } from '../../../src/validate/imports/weather.ts'

const check = (...lines: string[]) => readWeather({ path: 'weather.csv', text: lines.join('\n') })

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

  it.each<[string, string[], string, number]>([
    ['a high below the low', [head, '2027-06-02,60,80,0,'], 'quantity/range', 2],
    ['a day twice', [head, '2027-06-02,80,60,0,', '2027-06-02,80,60,0,'], 'ref/duplicate-id', 3],
    ['a missing column', ['date,high (°F),rain (in)', '2027-06-02,60,0'], 'schema/missing', 1],
    ['an empty cell that must be filled', [head, '2027-06-02,80,,0,'], 'quantity/number', 2],
    ['rain that cannot be', [head, '2027-06-02,80,60,99,'], 'quantity/range', 2],
  ])('is refused with %s', (_, lines, code, line) => {
    expect(check(...lines).problems[0]).toMatchObject({ code, place: { line } })
  })
})
