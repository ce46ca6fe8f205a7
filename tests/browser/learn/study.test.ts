import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  answered,
  askedBefore,
  begin,
  current,
  goOn,
  resumed,
  type Study,
  tally,
  turned,
} from '../../../src/browser/learn/study.ts'

const lessons = [
  { id: 'harrow', questions: 2 },
  { id: 'water', questions: 3 },
]

/** Answers question by question until nothing is left. */
function through(answers: readonly boolean[]): { study: Study; asked: string[] } {
  const asked: string[] = []
  const left = [...answers]
  let study = begin(lessons)
  for (let step = current(study); step; step = current(study)) {
    if (step.question !== undefined) {
      const isRight = left.shift() ?? true
      asked.push(`${step.lesson} ${step.question} ${isRight}`)
      study = answered(study, isRight)
    }
    study = goOn(study)
  }
  return { study, asked }
}

describe('questions of a role', () => {
  it('stand behind their lesson, one at a time', () => {
    expect(begin(lessons).steps.map((s) => `${s.lesson} ${s.question ?? ''}`)).toEqual([
      'harrow ',
      'harrow 0',
      'harrow 1',
      'water ',
      'water 0',
      'water 1',
      'water 2',
    ])
  })

  it('come back until each was right, and no longer', () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { maxLength: 40 }), (answers) => {
        const { study, asked } = through(answers)
        const right = asked.filter((a) => a.endsWith('true'))
        const wrong = asked.filter((a) => a.endsWith('false'))
        expect(new Set(right).size).toBe(5)
        expect(right).toHaveLength(5)
        expect(asked).toHaveLength(5 + wrong.length)
        const { questions, first } = tally(study)
        expect(questions).toBe(5)
        expect(first).toBe(5 - new Set(wrong).size)
      }),
    )
  })

  it('have their choices elsewhere each time', () => {
    expect(turned(3, 0)).toEqual([0, 1, 2])
    expect(turned(3, 1)).toEqual([1, 2, 0])
    let study = answered(goOn(begin(lessons)), false)
    while (!current(study)?.again) study = goOn(study)
    expect(askedBefore(study)).toBe(1)
  })
})

describe('somebody who stopped', () => {
  it('goes on there', () => {
    const study = answered(goOn(begin(lessons)), false)
    expect(resumed(JSON.stringify(study), lessons)).toEqual(study)
  })

  it('begins anew with other lessons, when all was done, or when what was kept is broken', () => {
    const study = goOn(begin(lessons))
    expect(resumed(JSON.stringify(study), lessons.toReversed())).toBeUndefined()
    expect(resumed(JSON.stringify(through([]).study), lessons)).toBeUndefined()
    for (const text of [null, '', '{', '[]', '{"steps":[1,2]}'])
      expect(resumed(text, lessons)).toBeUndefined()
  })
})
