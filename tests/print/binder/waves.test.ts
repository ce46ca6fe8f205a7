import { expect, it } from 'vitest'
import { wavesOf } from '../../../src/print/binder/waves.ts'

it('a part waits for those that it asks, and of two that ask each other neither waits for the other', () => {
  // A part that asks nobody, one that asks it, a front that asks all, an index that asks the front.
  expect(wavesOf([[], [0], [0, 1, 3], [1, 2]])).toEqual([0, 1, 2, 2])
  expect(wavesOf([[1], [0]])).toEqual([2, 2])
  expect(wavesOf([])).toEqual([])
})
