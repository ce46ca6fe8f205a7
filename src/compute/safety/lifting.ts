import { toUnit } from '../../model/quantity/format-quantity.ts'
import { calculation, refuse } from '../calculation.ts'

/**
 * Load constant of the equation as it is printed in pounds and inches; the metric print (23 kg) is
 * rounded.
 */
const constant = 51 * 0.45359237

/**
 * Heaviest load (kg) that nearly all healthy people can lift in such a way: NIOSH revised lifting
 * equation (publication 94-110). Nearer than ten inches, or moved less than ten inches, counts as
 * ten. Both hands, standing, on firm ground.
 */
export const lifting = calculation({
  id: 'lifting',
  sources: ['niosh-lifting'],
  inputs: {
    reach: { symbol: 'H', kind: 'smallWidth', range: [0.2, 0.635], formulaUnit: 'in' },
    height: { symbol: 'V', kind: 'smallWidth', range: [0, 1.778], formulaUnit: 'in' },
    travel: { symbol: 'D', kind: 'smallWidth', range: [0, 1.778], formulaUnit: 'in' },
    twist: { symbol: 'A', kind: 'angle', range: [0, 2.3562], formulaUnit: '°' },
    often: { symbol: 'FM', kind: 'ratio', range: [0, 1] },
    grip: { symbol: 'CM', kind: 'ratio', range: [0.9, 1] },
    load: { symbol: 'm', kind: 'handMass', range: [0.5, 100] },
  },
  outputs: {
    limit: {
      symbol: 'RWL',
      kind: 'handMass',
      tex: '51\\,\\text{lb} \\cdot \\frac{10}{\\max(10,\\,@reach)} \\cdot \\bigl(1 - 0.0075 \\cdot |@height - 30|\\bigr) \\cdot \\left(0.82 + \\frac{1.8}{\\max(10,\\,@travel)}\\right) \\cdot (1 - 0.0032\\,@twist) \\cdot @often \\cdot @grip',
      round: 'down',
    },
    index: { symbol: 'LI', kind: 'tenths', tex: '\\frac{@load}{@limit}', round: 'up' },
  },
  refusals: ['no-such-lift'],
  compute: (x) => {
    const [reach, height, travel] = [x.reach, x.height, x.travel].map((si) => toUnit(si, 'in')) as [
      number,
      number,
      number,
    ]
    const limit =
      constant *
      (10 / Math.max(10, reach)) *
      (1 - 0.0075 * Math.abs(height - 30)) *
      (0.82 + 1.8 / Math.max(10, travel)) *
      (1 - 0.0032 * toUnit(x.twist, '°')) *
      x.often *
      x.grip
    return limit > 0
      ? { limit, index: x.load / limit }
      : {
          limit: refuse('no-such-lift'),
          index: refuse('no-such-lift'),
        }
  },
})
