import { letterHeight } from '../../../src/compute/safety/letter-height.ts'
import { readingDistance } from '../../../src/compute/safety/reading-distance.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { numberOf } from '../../compute/support/answers.ts'
import { type Runner, si } from '../case.ts'

const inches = (letters: 'message' | 'signal' | 'poor', feet: number): number =>
  toUnit(numberOf(letterHeight.compute({ distance: si(feet, 'ft') })[letters]), 'in')

/** Distance, ft, over letter height, ft, far enough away that the smallest type does not matter. */
const ratio = (): number => (12 * 100) / inches('message', 100)

/** Letters of signs and posted sheets. */
export const letters: Readonly<Record<string, Runner>> = {
  letter: (x) => ({ value: inches('message', x.n('distance_ft')) }),
  letterPoor: (x) => ({ value: inches('poor', x.n('distance_ft')) }),
  letterSignal: (x) => ({ value: inches('signal', x.n('distance_ft')) }),
  letterLeast: () => ({ value: inches('message', 1) }),
  lettersAnInch: (x) => ({
    value: Number((ratio() * inches('message', x.n('ft_per_in'))).toFixed(6)),
  }),
  // Type of one point reads from so far; letters of that height read from so much farther.
  points: (x) => ({ value: (ratio() * x.si('h_in', 'in')) / readingDistance(1, x.n('cap_ratio')) }),
}
