import { calculation, refuse } from '../calculation.ts'

/** Load constant of the equation as it is printed in pounds and inches; the metric print (23 kg) is rounded. */
const constant = 51 * 0.45359237
const inch = 0.0254

/**
 * Heaviest load that nearly all healthy people can lift in such a way: NIOSH revised lifting equation (publication 94-110).
 */
export const lifting = calculation({
  id: 'lifting',
  title: 'How heavy a lift may be',
  about: 'The lifting equation of NIOSH starts from what can be lifted close to the body at knuckle height and takes off for reach, height, distance, twisting, repeating and a poor grip. Above it a second person, a smaller bag or a machine lifts.',
  sources: ['niosh-lifting'],
  inputs: {
    reach: { symbol: 'H', label: 'from the ankles to the hands, level', kind: 'smallWidth', range: [0.25, 0.63], formulaUnit: 'in' },
    height: { symbol: 'V', label: 'height of the hands at the start', kind: 'smallWidth', range: [0, 1.75], formulaUnit: 'in' },
    travel: { symbol: 'D', label: 'how far up or down it goes', kind: 'smallWidth', range: [0, 1.75], formulaUnit: 'in' },
    twist: { symbol: 'A', label: 'how far the body twists', kind: 'angle', range: [0, 2.36], formulaUnit: '°' },
    often: { symbol: 'FM', label: 'factor for how often (1 for now and then)', kind: 'ratio', range: [0, 1] },
    grip: { symbol: 'CM', label: 'factor for the grip (0.95 for a bag)', kind: 'ratio', range: [0.9, 1] },
    load: { symbol: 'm', label: 'load', kind: 'handMass', range: [0.5, 100] },
  },
  outputs: {
    limit: { symbol: 'RWL', label: 'at most, for one person', kind: 'handMass', tex: '51\\,\\text{lb} \\cdot \\frac{10}{@reach} \\cdot (1 - 0.0075\\,|@height - 30|) \\cdot \\left(0.82 + \\frac{1.8}{@travel}\\right) \\cdot (1 - 0.0032\\,@twist) \\cdot @often \\cdot @grip', round: 'down' },
    index: { symbol: 'LI', label: 'times that limit, for this load', kind: 'tenths', tex: '\\frac{@load}{@limit}' },
  },
  compute: (x) => {
    const [h, v, d] = [x.reach / inch, x.height / inch, x.travel / inch]
    const limit = constant * Math.min(1, 10 / h) * (1 - 0.0075 * Math.abs(v - 30)) * Math.min(1, 0.82 + 1.8 / Math.max(d, 10)) * (1 - 0.0032 * ((x.twist * 180) / Math.PI)) * x.often * x.grip
    return limit > 0 ? { limit, index: x.load / limit } : { limit: refuse('nobody should lift like that'), index: refuse('nobody should lift like that') }
  },
})
