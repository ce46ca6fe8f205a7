import { expect, it } from 'vitest'
import { wheelDays } from '../../../src/compute/people/wheel-days.ts'

it('counts each day begun: eight hours at an hour and five minutes a day are eight days', () => {
  // 480 / 65 = 7.4.
  expect(wheelDays.compute({ wheel: 8 * 3600, daily: 65 * 60 }).days).toBe(8 * 86_400)
  expect(wheelDays.compute({ wheel: 8 * 3600, daily: 3600 }).days).toBe(8 * 86_400)
  expect(wheelDays.compute({ wheel: 8 * 3600, daily: 96 * 60 }).days).toBe(5 * 86_400)
})
