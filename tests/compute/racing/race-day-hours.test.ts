import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  loadsInBreaks,
  raceDayHours,
  shareOfDay,
  trackTime,
} from '../../../src/compute/racing/race-day-hours.ts'
import { FEW, whole } from '../support/realistic.ts'

const min = 60

const h = 3600

const base = {
  rate: 5e-3 / 86_400,
  area: 17_000,
  load: 7,
  usable: 0.92,
  cycle: 25 * min,
  spread: 11 * min,
  trucks: 1,
  rise: 6 * h,
  set: 20 * h,
  start: 6 * h,
  done: 20 * h,
  begin: 7 * h,
  look: 11.5 * h,
  harrowed: 17.5 * h,
  first: 13 * h,
  interval: 20 * min,
  breakEvery: 3,
  breaks: 2,
  pause: 35 * min,
  breakLoads: 1,
  clear: 3 * min,
  before: 11 * min,
}

describe('a race day by the hour', () => {
  it('shares out the whole day of evaporation, most of it at noon', () => {
    fc.assert(
      fc.property(whole(4, 8), whole(16, 22), (rise, set) => {
        const shares = Array.from({ length: 24 }, (_, i) =>
          shareOfDay(i * h, (i + 1) * h, rise * h, set * h),
        )
        expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12)
        expect(Math.max(...shares)).toBe(
          Math.max(
            shares[Math.floor((rise + set) / 2)] ?? 0,
            shares[Math.floor((rise + set - 1) / 2)] ?? 0,
          ),
        )
      }),
      FEW,
    )
  })

  it('leaves the track to horses and to the harrow while they are on it', () => {
    expect(trackTime(12 * h, 13 * h, base)).toBe(0)
    expect(trackTime(6 * h, 7 * h, base)).toBe(0)
    expect(trackTime(17 * h, 17.5 * h, base)).toBe(0)
    expect(trackTime(8 * h, 9 * h, base) / min).toBe(60)
  })

  it('has water between races in breaks alone', () => {
    // The third race starts at 13:40, the next at 14:15; of the 21 min from 13:43 17 are before 14:00.
    expect(loadsInBreaks(13 * h, 14 * h, base)).toBeCloseTo(17 / 21, 9)
    expect(loadsInBreaks(13 * h, 16 * h, base)).toBeCloseTo(2, 9)
    expect(loadsInBreaks(13 * h, 16 * h, { ...base, breaks: 0 })).toBe(0)
    expect(trackTime(13 * h, 16 * h, base)).toBe(0)
  })

  it('accounts for every drop: drawn = put back + behind', () => {
    fc.assert(
      fc.property(
        whole(1, 12),
        whole(5, 60),
        whole(0, 300),
        whole(1, 3),
        (mm, cycle, full, trucks) => {
          const hours = raceDayHours({
            ...base,
            rate: (mm * 1e-3) / 86_400,
            cycle: cycle * min,
            spread: (cycle / 2) * min,
            trucks,
            store: { full, morning: full, recharge: 0.001 },
          })
          const lost = hours.reduce((sum, x) => sum + x.lost, 0)
          const given = hours.reduce((sum, x) => sum + x.given, 0)
          expect(given / base.area + (hours.at(-1)?.behind ?? 0)).toBeCloseTo(lost, 9)
          expect(
            hours.every((x) => x.behind >= 0 && (x.left ?? 0) >= -1e-9 && (x.left ?? 0) <= full),
          ).toBe(true)
        },
      ),
      FEW,
    )
  })

  it('is never further behind with another truck', () => {
    const worst = (trucks: number): number =>
      Math.max(...raceDayHours({ ...base, cycle: 50 * min, trucks }).map((x) => x.behind))
    expect(worst(2)).toBeLessThanOrEqual(worst(1))
  })
})
