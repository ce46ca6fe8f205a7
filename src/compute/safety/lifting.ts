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
  title: 'How heavy a lift may be',
  about:
    'The lifting equation of NIOSH starts from what can be lifted close to the body at knuckle height and takes off for reach, height, distance, twisting, repeating and a poor grip. The lower end of the lift decides, whether the load goes up or is set down with care. Above the limit a second person, a smaller bag or a machine lifts; at three times the limit nearly everybody is at risk. It does not hold for shovels, barrows, one hand, kneeling or slippery ground.',
  sources: ['niosh-lifting'],
  inputs: {
    reach: {
      symbol: 'H',
      label: 'from the ankles to the hands, level',
      kind: 'smallWidth',
      range: [0.2, 0.635],
      formulaUnit: 'in',
      howTo:
        'From the middle between the ankles to the middle between the hands, along the ground.',
    },
    height: {
      symbol: 'V',
      label: 'height of the hands at the lower end',
      kind: 'smallWidth',
      range: [0, 1.778],
      formulaUnit: 'in',
      howTo: 'From the ground to the hands.',
    },
    travel: {
      symbol: 'D',
      label: 'how far up or down it goes',
      kind: 'smallWidth',
      range: [0, 1.778],
      formulaUnit: 'in',
      howTo: 'Height of the hands at one end less that at the other.',
    },
    twist: {
      symbol: 'A',
      label: 'how far the body twists',
      kind: 'angle',
      range: [0, 2.3562],
      formulaUnit: '°',
      howTo: 'Between where the feet point and where the load is.',
    },
    often: {
      symbol: 'FM',
      label: 'factor for how often (1 for now and then)',
      kind: 'ratio',
      range: [0, 1],
      howTo: 'From the table of publication 94-110: lifts a minute and hours of it.',
    },
    grip: {
      symbol: 'CM',
      label: 'factor for the grip (0.90 for a limp bag)',
      kind: 'ratio',
      range: [0.9, 1],
      howTo: 'Handles 1, a stiff box without handles 0.95, a bag that sags 0.90.',
    },
    load: {
      symbol: 'm',
      label: 'load',
      kind: 'handMass',
      range: [0.5, 100],
      howTo: 'Read the label, or weigh it.',
    },
  },
  outputs: {
    limit: {
      symbol: 'RWL',
      label: 'at most, for one person',
      kind: 'handMass',
      tex: '51\\,\\text{lb} \\cdot \\frac{10}{\\max(10,\\,@reach)} \\cdot \\bigl(1 - 0.0075 \\cdot |@height - 30|\\bigr) \\cdot \\left(0.82 + \\frac{1.8}{\\max(10,\\,@travel)}\\right) \\cdot (1 - 0.0032\\,@twist) \\cdot @often \\cdot @grip',
      round: 'down',
    },
    index: {
      symbol: 'LI',
      label: 'times that limit, for this load',
      kind: 'tenths',
      tex: '\\frac{@load}{@limit}',
      round: 'up',
    },
  },
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
          limit: refuse('nobody should lift like that'),
          index: refuse('nobody should lift like that'),
        }
  },
})
