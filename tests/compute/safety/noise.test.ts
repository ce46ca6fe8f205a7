import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  noise,
  noiseDose,
  permittedByRule,
  recommended,
} from '../../../src/compute/safety/noise.ts'
import { eightHourMean } from '../../../src/compute/safety/silica.ts'
import { FEW, whole } from '../support/realistic.ts'

const hour = 3600

describe('noise and dust', () => {
  it('may be borne half as long for each exchange of levels, and shorter as recommended than as allowed', () => {
    fc.assert(
      fc.property(whole(70, 120), (level) => {
        expect(permittedByRule(level + 5)).toBeCloseTo(permittedByRule(level) / 2, 6)
        expect(recommended(level + 3)).toBeCloseTo(recommended(level) / 2, 6)
        if (level >= 78) expect(recommended(level)).toBeLessThan(permittedByRule(level))
      }),
      FEW,
    )
  })

  it('add up over the parts of a day, and make a whole dose in the time that is allowed', () => {
    fc.assert(
      fc.property(whole(70, 120), whole(70, 120), whole(1, 8), (a, b, hours) => {
        const [one, other] = [
          { level: a, time: hours * hour },
          { level: b, time: hour },
        ]
        for (const longest of [recommended, permittedByRule]) {
          expect(noiseDose([one, other], longest)).toBeCloseTo(
            noiseDose([one], longest) + noiseDose([other], longest),
            6,
          )
          expect(noiseDose([{ level: a, time: longest(a) }], longest)).toBeCloseTo(1, 9)
        }
        expect(
          eightHourMean([
            { dust: a, time: hours * hour },
            { dust: b, time: hour },
          ]),
        ).toBeCloseTo((a * hours + b) / 8, 9)
      }),
      FEW,
    )
    expect(noise.compute({ level: 90, shift: 8 * hour }).dose).toBeCloseTo(1, 12)
    expect(noise.compute({ level: 85, shift: 8 * hour })['recommended-dose']).toBeCloseTo(1, 12)
  })
})
