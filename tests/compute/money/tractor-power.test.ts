import { expect, it } from 'vitest'
import { tractorFuel } from '../../../src/compute/money/tractor-fuel.ts'
import { tractorPower } from '../../../src/compute/money/tractor-power.ts'
import { numberOf } from '../support/answers.ts'
import { FT, GAL, MPH } from '../support/realistic.ts'

const lbf = 4.4482216152605
const hp = 745.6998715822702

it('needs eight horsepower at the hitch and fifteen at the take-off for ten feet at five miles an hour', () => {
  // 10 ft × 60 lbf/ft × 5 mph ÷ 375 = 8 hp; ÷ 0.55 = 14.5 hp
  const out = tractorPower.compute({
    width: 10 * FT,
    draft: (60 * lbf) / FT,
    speed: 5 * MPH,
    traction: 0.55,
  })
  expect(numberOf(out.drawbar) / hp).toBeCloseTo(8, 3)
  expect(numberOf(out.need) / hp).toBeCloseTo(14.545, 2)
})

it('burns 0.044 gal an hour for each horsepower', () => {
  expect((numberOf(tractorFuel.compute({ power: 50 * hp }).rate) * 3600) / GAL).toBeCloseTo(2.2, 6)
})
