import { describe, expect, it } from 'vitest'
import { allUses } from '../../../src/compute/uses/all-uses.ts'
import { missingFor } from '../../../src/compute/uses/missing-for.ts'
import { sampleReadings } from '../../../src/compute/uses/readings.ts'
import { useTable } from '../../../src/compute/uses/use-table.ts'

const nothing = { known: new Set<string>(), data: {}, system: 'us' } as const

describe('what is missing for a worksheet', () => {
  it('is just enough: with it the worksheet is there, without any part of it not', () => {
    for (const id of Object.keys(useTable)) {
      const missing = missingFor(id, nothing)
      if (!missing) continue
      const readings = Object.fromEntries(missing.readings.map((r) => [r, sampleReadings[r]]))
      const there = (facts: readonly string[]): boolean =>
        allUses(new Set(facts), 'us', readings).some((use) => use.id === id)
      expect(there(missing.facts), id).toBe(true)
      for (const path of missing.facts)
        expect(there(missing.facts.filter((p) => p !== path)), `${id} without ${path}`).toBe(false)
    }
  })
  it('names readings too', () => {
    expect(missingFor('depths', nothing)).toEqual({ facts: [], readings: ['depths'] })
  })
  it('knows nothing of a worksheet that is not in the table', () => {
    expect(missingFor('nosuch', nothing)).toBeUndefined()
  })
})
