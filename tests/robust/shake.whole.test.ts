import { afterAll, describe, expect, it } from 'vitest'
import { prepareGround } from './ground.ts'
import { shakeOnce, subjectNames, subjectOf } from './shake.ts'

const ground = await prepareGround()
afterAll(() => ground.remove())

const seeds = Array.from({ length: 300 }, (_, i) => i + 1)

describe('files changed by chance', () => {
  it('are of every kind', () =>
    expect(new Set(seeds.map(subjectOf))).toEqual(new Set(subjectNames)))

  it.each(subjectNames)(
    'of the kind %s are refused with their places, or used without harm',
    async (name) => {
      const faulty: string[] = []
      const endings = new Set<string>()
      for (const seed of seeds.filter((s) => subjectOf(s) === name)) {
        const run = await shakeOnce(ground, seed)
        endings.add(run.ending)
        if (run.faults.length > 0) faulty.push(`${run.name}: ${run.faults[0]}`)
      }
      expect(faulty).toEqual([])
      // Where every run is refused, something else than the change is wrong, and nothing is tried.
      expect(endings.has('made') || endings.has('unharmed')).toBe(true)
    },
  )

  it('are the same for the same seed', async () => {
    const told = async () => {
      const { took: _, ...run } = await shakeOnce(ground, 11)
      return run
    }
    expect(await told()).toEqual(await told())
  })
})
