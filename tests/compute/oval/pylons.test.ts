import { expect, it } from 'vitest'
import { pylons } from '../../../src/compute/oval/pylons.ts'
import { FT } from '../support/realistic.ts'

it('counts 56 around a half mile, 40 ft apart in the turns and 60 ft on the straights', () => {
  // 2π × 226.25 ÷ 40 = 35.5 → 36; 1,200 ÷ 60 = 20
  const oval = { straight: 600 * FT, radius: 226.25 * FT }
  expect(pylons.compute({ ...oval, turns: 40 * FT, straights: 60 * FT }).count).toBe(56)
})
