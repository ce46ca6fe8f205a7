import { describe, expect, it } from 'vitest'
import { lessonMinutes } from '../../../src/render/site/learn-minutes.ts'
import { demoManual, demos } from '../../support/demo.ts'

describe('how long lessons take', () => {
  it.each(demos)(
    'is at most half an hour for whoever helps for the first time at %s',
    async (id) => {
      const { manual } = await demoManual(id)
      const taken = (course: string) =>
        lessonMinutes(
          manual.courses
            .find((c) => c.id === course)
            ?.lessons.flatMap((lesson) => manual.procedures.find((p) => p.id === lesson) ?? []) ??
            [],
        )
      expect(taken('volunteer')).toBeGreaterThan(20)
      expect(taken('volunteer')).toBeLessThanOrEqual(30)
    },
  )

  it('counts words, drawings and questions', async () => {
    const { manual } = await demoManual('larkmoor')
    const [one] = manual.procedures
    if (!one) throw new Error('no procedure')
    const training = { aims: [], show: [], practice: [], questions: [], drawing: undefined }
    const bare = {
      ...one,
      title: 'word '.repeat(130),
      methods: [],
      sheet: { ...one.sheet, drawing: undefined },
      training,
    }
    expect(lessonMinutes([bare, bare])).toBeCloseTo(2, 9)
    const asked = { ask: '', choices: ['', ''], right: 1, why: '' }
    const more = { ...bare, training: { ...training, drawing: 'x', questions: [asked] } }
    expect(lessonMinutes([more])).toBeCloseTo(2, 9)
  })
})
