import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatQuantity, type Locale } from '../../../src/model/quantity/format-quantity.ts'
import { type KindName, kinds } from '../../../src/model/quantity/kinds.ts'
import { parseQuantity } from '../../../src/model/quantity/parse-quantity.ts'

const us: Locale = { system: 'us', currency: 'USD' }
const metric: Locale = { system: 'metric', currency: 'CAD' }

describe('formatQuantity', () => {
  it.each<[number, KindName, string, string]>([
    [0.0573, 'depth', '2 1/4 in', '55 mm'],
    [0.0127, 'depth', '1/2 in', '15 mm'],
    [5000, 'duration', '1 h 25 min', '1 h 25 min'],
    [3600, 'duration', '1 h', '1 h'],
    [61, 'minutes', '2 min', '2 min'],
    [804.672, 'distance', '2,640 ft', '804.67 m'],
    [804.7, 'distance', '2,640.1 ft', '804.70 m'],
    [2.1, 'whole', '3', '3'],
    [3.0000000001, 'whole', '3', '3'],
    [0.025, 'fineShare', '2.5 %', '2.5 %'],
    [907.18474, 'mass', '1 ton', '1 t'],
    [0.025, 'hourlyRate', '$90/h', 'CA$90/h'],
    [300, 'temperature', '80 °F', '27 °C'],
  ])("prints %d as %s in the trade's rounding", (si, kind, inUs, inMetric) => {
    expect(formatQuantity(si, kind, us).text).toBe(inUs)
    expect(formatQuantity(si, kind, metric).text).toBe(inMetric)
  })

  it('says how it rounds', () => {
    expect(formatQuantity(5000, 'duration', us).rounding).toEqual({ mode: 'up', step: '5 min' })
    expect(formatQuantity(0.05, 'depth', us).rounding).toEqual({ mode: 'nearest', step: '1/4 in' })
    expect(formatQuantity(5 * 86_400, 'days', us).rounding.step).toBe('1 day')
  })

  it('is never off by more than one step', () => {
    const names = Object.keys(kinds).filter(
      (k) =>
        ![
          'money',
          'hourlyRate',
          'massPrice',
          'volumePrice',
          'temperature',
          'duration',
          'minutes',
          'clock',
          'quarterClock',
          'date',
        ].includes(k),
    ) as KindName[]
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.constantFrom(us, metric),
        fc.integer({ min: 0, max: 5000 }),
        (kind, locale, steps) => {
          const style = kinds[kind][locale.system]
          const read = parseQuantity(`${style.step} ${style.unit}`, { plain: true })
          if (!read.ok) throw new Error(kind)
          const si = read.quantity.si * steps
          const again = parseQuantity(formatQuantity(si, kind, locale).text.replace('−', '-'), {
            plain: true,
          })
          expect(again.ok && Math.abs(again.quantity.si - si) <= read.quantity.si * 1.0001).toBe(
            true,
          )
        },
      ),
      { numRuns: 200 },
    )
  })
})
