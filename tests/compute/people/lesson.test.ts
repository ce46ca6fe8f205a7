import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lesson } from '../../../src/compute/people/lesson.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

const min = 60

const input = { volunteers: 10, group: 6, talk: 10 * min, practice: 12 * min, modules: 8 }

describe('training', () => {
  it('takes a talk and one practice for each group: worked by hand', () => {
    // Ten people are two groups: 10 + 2 × 12 min a module, eight of them.
    const found = lesson.compute(input)
    expect([found.groups, numberOf(found.module) / min, numberOf(found.all) / min]).toEqual([
      2, 34, 272,
    ])
  })

  it('is never shorter with one more volunteer, nor longer with larger groups', () => {
    fc.assert(
      fc.property(whole(1, 60), whole(1, 12), (volunteers, group) => {
        const all = (more: object): number =>
          numberOf(lesson.compute({ ...input, volunteers, group, ...more }).all)
        expect(all({ volunteers: volunteers + 1 })).toBeGreaterThanOrEqual(all({}))
        expect(all({ group: group + 1 })).toBeLessThanOrEqual(all({}))
      }),
      FEW,
    )
  })
})
