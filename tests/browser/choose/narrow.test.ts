import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  answering,
  countsOf,
  mostTelling,
  narrow,
  nextQuestion,
} from '../../../src/browser/choose/narrow.ts'
import { demoManual, demos } from '../../support/demo.ts'

const all = ['a', 'b', 'c', 'd']
/** Nothing is said of `d` by the first question, and of `c` and `d` by the second. */
const questions = [
  [['a', 'b'], ['c']],
  [['a'], ['b']],
]
const none = [undefined, undefined]

describe('answers to what is seen', () => {
  it('leave what they fit, and what the question says nothing about', () => {
    expect(narrow(questions, none, all)).toEqual(all)
    expect(narrow(questions, [0, undefined], all)).toEqual(['a', 'b', 'd'])
    expect(narrow(questions, [0, 1], all)).toEqual(['b', 'd'])
    expect(countsOf(questions, [0, undefined], all, 1)).toEqual([2, 2])
  })

  it('are asked for while they leave less', () => {
    expect(nextQuestion(questions, none, all)).toBe(0)
    expect(nextQuestion(questions, [0, undefined], all)).toBe(1)
    expect(nextQuestion(questions, [1, undefined], all)).toBeUndefined()
  })

  const asked = fc
    .array(fc.array(fc.subarray(all), { minLength: 1, maxLength: 4 }), {
      minLength: 1,
      maxLength: 4,
    })
    .chain((some) =>
      fc.tuple(
        fc.constant(some),
        fc.tuple(
          ...some.map((answers) => fc.option(fc.nat(answers.length - 1), { nil: undefined })),
        ),
        fc.nat(some.length - 1),
      ),
    )

  it('never add anything, and their order does not matter', () => {
    fc.assert(
      fc.property(asked, ([some, chosen, question]) => {
        const before = narrow(some, answering(chosen, question, undefined), all)
        const after = narrow(some, chosen, all)
        for (const id of after) expect(before).toContain(id)
        expect(narrow([...some].reverse(), [...chosen].reverse(), all)).toEqual(after)
      }),
    )
  })
})

describe('what tells causes apart', () => {
  it('is done first where it leads to the most different procedures', () => {
    const causes = [
      { by: 'look', leads: 'water' },
      { by: 'squeeze', leads: 'water' },
      { by: 'squeeze', leads: 'harrow' },
      { by: 'look', leads: 'water' },
    ]
    expect(mostTelling(causes)).toEqual(['squeeze', 'look'])
    expect(mostTelling([])).toEqual([])
  })
})

describe.each(demos)('the questions of %s', (id) => {
  it('lead with their own answers to every symptom, and leave few beside it', async () => {
    const { manual } = await demoManual(id)
    const here = manual.chooser.questions.map(({ answers }) => answers.map((a) => a.symptoms))
    const ids = manual.symptoms.map((s) => s.id)
    const left = ids.map((symptom) => {
      const own = here.map((answers) => {
        const answer = answers.findIndex((fits) => fits.includes(symptom))
        return answer < 0 ? undefined : answer
      })
      const fits = narrow(here, own, ids)
      expect(fits, symptom).toContain(symptom)
      return fits.length
    })
    expect(left.filter((count) => count > 6)).toEqual([])
    expect(left.reduce((sum, count) => sum + count, 0) / left.length).toBeLessThan(4)
  })
})
