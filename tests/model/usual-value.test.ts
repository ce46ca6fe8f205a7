import { describe, expect, it } from 'vitest'
import { factSpec } from '../../src/model/fact-spec.ts'
import { usualValue } from '../../src/model/usual-value.ts'

describe('a usual value', () => {
  it('is that of the reference data in the system of the facility', () => {
    const width = factSpec('oval.width.turns')?.typical('clay')
    expect(usualValue(width, 'us')).toBeCloseTo(65 * 0.3048, 9)
    expect(usualValue(width, 'metric')).toBe(20)
  })

  it('is a fault of the reference data where there is none, or none that can be read', () => {
    expect(() => usualValue(undefined, 'us')).toThrow('reference data')
    const odd = { us: 'wide', metric: '20 m', basis: 'memory', sources: [], note: '' } as const
    expect(() => usualValue(odd, 'us')).toThrow('reference data: wide')
  })
})
