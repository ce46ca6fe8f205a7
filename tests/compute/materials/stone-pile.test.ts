import fc from 'fast-check'
import { expect, it } from 'vitest'
import { conePile, windrowPile } from '../../../src/compute/materials/pile.ts'
import { stonePile } from '../../../src/compute/materials/stone-pile.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

it('is a heap of just that volume, round or long', () => {
  fc.assert(
    fc.property(whole(5, 900), whole(25, 45), whole(3, 9), (tons, degrees, width) => {
      const repose = (degrees * Math.PI) / 180
      const out = stonePile.compute({ mass: tons * 1000, weight: 1600, repose, width })
      const volume = numberOf(out.volume)
      expect(conePile(numberOf(out.across), repose).volume).toBeCloseTo(volume, 6)
      const ridge = numberOf(out.length) - width
      if (ridge > 0) expect(windrowPile(width, ridge, repose).volume).toBeCloseTo(volume, 6)
    }),
    FEW,
  )
})
