import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { materialMoves } from '../../../src/compute/survey/material-moves.ts'
import { FEW } from '../support/realistic.ts'

describe('moving material', () => {
  it('leaves nothing unaccounted for, and never moves from a place that has too little', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 2, maxLength: 12 }),
        (tons) => {
          const balances = tons.map((excess, i) => ({ station: i * 60, excess }))
          const moves = materialMoves(balances, tons.length * 60, 0)
          for (const { station, excess } of balances) {
            const out = moves
              .filter((m) => m.from === station)
              .reduce((sum, m) => sum + m.amount, 0)
            const into = moves.filter((m) => m.to === station).reduce((sum, m) => sum + m.amount, 0)
            expect(out).toBe(Math.max(0, excess))
            expect(into).toBe(Math.max(0, -excess))
          }
          expect(moves.every((m) => m.distance <= (tons.length * 60) / 2)).toBe(true)
        },
      ),
      FEW,
    )
  })

  it('goes the short way around, across the start of the home straight', () => {
    expect(
      materialMoves(
        [
          { station: 10, excess: 5 },
          { station: 790, excess: -5 },
        ],
        800,
        0,
      ),
    ).toEqual([{ from: 10, to: 790, amount: 5, distance: 20 }])
  })
})
