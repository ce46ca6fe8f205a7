import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lengthAt, railOf, turnShare } from '../../../src/compute/survey/along.ts'
import { FEW, FT, ovals } from '../support/realistic.ts'

describe('ground along the oval', () => {
  it('adds up over any stations to the lap at that offset', () => {
    fc.assert(
      fc.property(
        ovals,
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.array(fc.double({ min: 0, max: 0.999, noNaN: true }), { minLength: 2, maxLength: 6 }),
        (oval, offset, shares) => {
          const stops = [...new Set(shares)].sort((a, b) => a - b).map((s) => s * railOf(oval))
          const sum = stops.reduce(
            (total, from, i) =>
              total + lengthAt(oval, from, stops[i + 1] ?? (stops[0] ?? 0) + railOf(oval), offset),
            0,
          )
          expect(sum).toBeCloseTo(2 * oval.straight + 2 * Math.PI * (oval.radius + offset), 6)
        },
      ),
      FEW,
    )
  })

  it('lies wholly on the straight or on the turn at every foot that is the blend away from their meeting', () => {
    const oval = { straight: 600 * FT, radius: 226.18 * FT, widthStraights: 20, widthTurns: 20 }
    const turn = Math.PI * oval.radius
    const blend = 50 * FT
    const shares = (from: number, to: number): ReadonlySet<number> => {
      const stations: number[] = []
      for (let foot = Math.ceil((from + blend) / FT); foot * FT <= to - blend; foot++)
        stations.push(turnShare(oval, foot * FT - blend, foot * FT + blend))
      return new Set(stations)
    }
    expect([...shares(0, oval.straight)]).toEqual([0])
    expect([...shares(oval.straight, oval.straight + turn)]).toEqual([1])
    expect([...shares(oval.straight + turn, 2 * oval.straight + turn)]).toEqual([0])
    expect([...shares(2 * oval.straight + turn, 2 * (oval.straight + turn))]).toEqual([1])
  })
})
