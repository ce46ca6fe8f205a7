import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { allClear, lightning } from '../../../src/compute/safety/lightning.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

describe('lightning', () => {
  const wait = 1800

  it('is as far away as it is long to thunder', () => {
    fc.assert(
      fc.property(whole(1, 60), (seconds) => {
        const away = (t: number): number =>
          numberOf(lightning.compute({ seconds: t, wait }).distance)
        expect(away(2 * seconds)).toBeCloseTo(2 * away(seconds), 9)
        // Sound in air between freezing and a hot day goes 331 to 355 m/s; the rule of five says
        // 322.
        expect(away(seconds)).toBeLessThan(331 * seconds)
        expect(away(seconds)).toBeGreaterThan(0.9 * 355 * seconds)
      }),
      FEW,
    )
  })

  it('starts the wait anew with each thunder, in whatever order they are written down', () => {
    fc.assert(
      fc.property(
        fc.array(whole(0, 86_400), { minLength: 1, maxLength: 8 }),
        whole(0, 86_400),
        (thunders, another) => {
          const clear = allClear(thunders, wait)
          expect(allClear([...thunders].reverse(), wait)).toBe(clear)
          expect(thunders.every((t) => clear - t >= wait)).toBe(true)
          expect(allClear([...thunders, another], wait)).toBe(Math.max(clear, another + wait))
        },
      ),
      FEW,
    )
  })
})
