import { expect, it } from 'vitest'
import { isWithin } from '../../../src/answers/cure.ts'
import type { Path } from '../../../src/read/read-yaml.ts'
import { demos } from '../../support/demo.ts'
import { leavesOf, planted } from './plant.ts'
import { workHere } from './work.ts'

const dotted = (path: Path): string => path.join('.')

/** Whether one dotted path is another or lies below it; keys with dots in them do no harm here. */
const holds = (outer: string, path: Path): boolean =>
  `${dotted(path)}.`.startsWith(outer === '' ? '' : `${outer}.`)

/**
 * Declares tests of one fault in every entry of every demo.
 * @param sample One entry of so many is tried.
 */
export const describeOneFault = (sample: number): void =>
  it.each(demos)(
    '%s is drawn and worked out whatever one entry says',
    async (demo) => {
      const work = await workHere()
      const whole = work(planted(demo, [])).manual?.figures.length ?? 0
      const tried = leavesOf(demo).filter((_, i) => i % sample === 0)
      expect(tried.length).toBeGreaterThan(2)
      for (const path of tried) {
        const at = dotted(path)
        const worked = work(planted(demo, [[path, { nonsense: [1] }]]))
        expect({ at, left: worked.leftOut.some((out) => holds(out, path)) }).toEqual({
          at,
          left: true,
        })
        // The fault is told where it lies, and nothing that its cure has brought about.
        const errors = worked.problems.filter((p) => p.severity === 'error')
        expect({ at, told: errors.some((p) => isWithin(p.path ?? [], path)) }).toEqual({
          at,
          told: true,
        })
        // Whoever calls a demo otherwise has copied it, and that is told too.
        if (at === 'id' || at === 'name') continue
        // Beside one that is not known, another is held against what is usual.
        const more = errors.filter((p) => !isWithin(p.path ?? [], path.slice(0, -1)))
        expect({ at, more }).toEqual({ at, more: [] })
        expect(worked.leftOut.length, `${at}: ${worked.leftOut.join(', ')}`).toBeLessThan(4)
        expect(worked.manual?.geometry.lap, at).toBeGreaterThan(0)
        // A machine or a race day that is left out takes figures along, and never most of them.
        expect(worked.manual?.figures.length, at).toBeGreaterThan(whole / 2)
      }
    },
    600_000,
  )
