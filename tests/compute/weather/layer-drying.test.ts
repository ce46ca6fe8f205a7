import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  depletionAfter,
  dryingTime,
  layerDrying,
} from '../../../src/compute/weather/layer-drying.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { evaluateFormula } from '../support/evaluate-formula.ts'
import { FEW, whole } from '../support/realistic.ts'

describe('how fast a layer dries', () => {
  const layer = {
    depth: 0.032,
    unitWeight: 1670,
    held: 0.14,
    target: 0.08,
    dusty: 0.03,
    share: 0.5,
    rate: 5e-3 / 86_400,
  }

  it('agrees with FAO-56 chapter 7 taken in ever shorter steps', () => {
    // Twelve millimeters in all, five of them readily, 6 mm a day from the wet surface; a
    // thousandth of a day a step. Equation 74 of the paper holds the surface back as it dries.
    const steps = (days: number): number => {
      let depleted = 0
      for (let i = 0; i < days * 1000; i++)
        depleted += (depleted <= 5 ? 1 : (12 - depleted) / (12 - 5)) * 6e-3
      return depleted
    }
    for (const lost of [3, 5, 8, 11]) {
      expect(steps(dryingTime(lost, 12, 5, 6))).toBeCloseTo(lost, 1)
      expect(depletionAfter(0, 12, 5, 6, dryingTime(lost, 12, 5, 6))).toBeCloseTo(lost, 9)
      expect(depletionAfter(depletionAfter(2, 12, 5, 6, 0.4), 12, 5, 6, 0.6)).toBeCloseTo(
        depletionAfter(2, 12, 5, 6, 1),
        9,
      )
    }
  })

  it('is what its printed formula gives, before and after the readily lost water is gone', () => {
    const tex = layerDrying.outputs.workable?.tex.split('t(D) = ')[1] ?? ''
    const values = { total: 12, readily: 5, rate: 6 / 1.2 }
    for (const lost of [3, 5, 8, 11])
      expect(evaluateFormula(tex.replaceAll('D', `${lost}`), values)).toBeCloseTo(
        dryingTime(lost, 12, 5, 6),
        9,
      )
  })

  it('takes longer when it is deeper, and half as long where the air draws twice as much', () => {
    fc.assert(
      fc.property(whole(10, 100), whole(1, 10), (mm, eto) => {
        const at = (x: object) =>
          layerDrying.compute({ ...layer, depth: mm / 1000, rate: (eto * 1e-3) / 86_400, ...x })
        expect(numberOf(at({ depth: (mm + 5) / 1000 }).dust)).toBeGreaterThan(numberOf(at({}).dust))
        expect(numberOf(at({ rate: (2 * eto * 1e-3) / 86_400 }).dust)).toBeCloseTo(
          numberOf(at({}).dust) / 2,
          3,
        )
      }),
      FEW,
    )
  })

  it('refuses moistures that are out of order', () => {
    const found = layerDrying.compute({ ...layer, target: 0.02 })
    expectRefused([found.workable, found.dust], /^moisture-not-between$/)
  })
})
