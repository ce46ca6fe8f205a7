import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { materialMoves } from '../../../src/compute/survey/material-moves.ts'
import { FEW } from '../support/realistic.ts'

/** What ground within its limits adds to the net of a stretch is small. */
const balance = fc
  .record({
    tooDeep: fc.integer({ min: 0, max: 50 }),
    tooThin: fc.integer({ min: 0, max: 50 }),
    within: fc.integer({ min: -5, max: 5 }),
  })
  .map(({ tooDeep, tooThin, within }) => ({ tooDeep, tooThin, net: tooDeep - tooThin + within }))

const ring = fc
  .array(balance, { minLength: 2, maxLength: 12 })
  .map((list) => list.map((b, i) => ({ ...b, station: i * 60 })))

const sum = (amounts: readonly number[]): number => amounts.reduce((a, b) => a + b, 0)

describe('moving material', () => {
  it('takes from no stretch more than lies too deep there, and gives none more than is missing', () => {
    fc.assert(
      fc.property(ring, (balances) => {
        const moves = materialMoves(balances, balances.length * 60, 0)
        const around = moves.filter((m) => m.from !== undefined && m.to !== undefined)
        for (const { station, tooDeep, tooThin } of balances) {
          const out = sum(around.filter((m) => m.from === station).map((m) => m.amount))
          const into = sum(around.filter((m) => m.to === station).map((m) => m.amount))
          expect(out).toBeLessThanOrEqual(tooDeep)
          expect(into).toBeLessThanOrEqual(tooThin)
        }
        expect(moves.every((m) => m.distance <= (balances.length * 60) / 2)).toBe(true)
      }),
      FEW,
    )
  })

  it('leaves nothing too deep beside something too thin, nor a stretch off its depth without the stockpile', () => {
    fc.assert(
      fc.property(ring, (balances) => {
        const moves = materialMoves(balances, balances.length * 60, 0)
        const around = moves.filter((m) => m.from !== undefined && m.to !== undefined)
        const moved = sum(around.map((m) => m.amount))
        expect(moved).toBe(
          Math.min(sum(balances.map((b) => b.tooDeep)), sum(balances.map((b) => b.tooThin))),
        )
        for (const { station, tooDeep, tooThin, net } of balances) {
          const on = (list: typeof moves): number =>
            sum(list.filter((m) => m.to === station).map((m) => m.amount)) -
            sum(list.filter((m) => m.from === station).map((m) => m.amount))
          const left = net + on(moves)
          if (tooDeep > 0 && tooThin > 0) expect(left).toBe(0)
          // Within its limits a stretch keeps what it has.
          if (tooDeep === 0 && tooThin === 0) expect(left).toBe(net)
        }
      }),
      FEW,
    )
  })

  it('moves nothing between stretches that are within their limits', () => {
    const within = [30, -30].map((net, i) => ({ station: i * 60, tooDeep: 0, tooThin: 0, net }))
    expect(materialMoves(within, 800, 0)).toEqual([])
  })

  it('goes the short way around, across the start of the home straight', () => {
    expect(
      materialMoves(
        [
          { station: 10, tooDeep: 5, tooThin: 0, net: 5 },
          { station: 790, tooDeep: 0, tooThin: 5, net: -5 },
        ],
        800,
        0,
      ),
    ).toEqual([{ from: 10, to: 790, amount: 5, distance: 20 }])
  })
})
