import { describe, expect, it } from 'vitest'
import { sieveNames, sieveOpening } from '../../src/model/sieves.ts'

describe('sieves', () => {
  it('get finer down the table, and an unknown one has no opening', () => {
    const openings = sieveNames.map((name) => sieveOpening(name) ?? 0)
    expect([...openings].sort((a, b) => b - a)).toEqual(openings)
    expect(sieveOpening('No. 200')).toBe(0.000075)
    expect(sieveOpening('No. 12')).toBeUndefined()
  })
})
