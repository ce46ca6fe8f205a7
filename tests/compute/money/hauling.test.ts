import { describe, expect, it } from 'vitest'
import { tripTime, trucksInBalance, trucksWithSpare } from '../../../src/compute/money/hauling.ts'

describe('rollers, loaders and trucks', () => {
  it('need one truck more after the Army rule than in balance', () => {
    const trip = tripTime({ load: 120, haul: 300, dump: 60, back: 240, spot: 0 })
    expect(trip).toBe(720)
    expect([trucksInBalance(trip, 120), trucksWithSpare(trip, 120)]).toEqual([6, 7])
    expect(() => tripTime({ load: -1, haul: 0, dump: 0, back: 0, spot: 0 })).toThrow(RangeError)
  })
})
