import {
  fresnel,
  type Spiral,
  spiraledTurn,
  spiralTangent,
  transitionSpiral,
} from '../../../src/compute/oval/transition-spiral.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import type { Answers, Runner } from './case.ts'

const answers = ({ angle, x, y, shift, tangent, chord }: Spiral): Answers => ({
  theta_rad: angle,
  theta_deg: toUnit(angle, '°'),
  X: x,
  Y: y,
  shift_p: shift,
  k: tangent,
  chord,
})

export const spirals: readonly (readonly [RegExp, Runner])[] = [
  [
    /^A-CLO-F/,
    (x) => {
      const { c, s } = fresnel(x.n('x'))
      return { C: c, S: s }
    },
  ],
  [/^A-CLO-01$/, (x) => answers(transitionSpiral(x.n('Ls_ft'), x.n('R_ft')))],
  [
    /^A-CLO-02$/,
    (x) => {
      const spiral = transitionSpiral(x.n('Ls_ft'), x.n('R_ft'))
      return {
        value: spiralTangent(x.n('Lm_ft') / x.n('R_ft') + 2 * spiral.angle, x.n('R_ft'), spiral),
      }
    },
  ],
  [/^A-CLO-0/, (x) => answers(transitionSpiral(x.n('Ls'), x.n('R')))],
  [/^A-CLO-10$/, (x) => ({ value: spiraledTurn(x.n('R'), x.n('Ls')) })],
  [/^A-CLO-11$/, (x) => ({ value: x.n('R') + transitionSpiral(x.n('Ls'), x.n('R')).shift })],
]
