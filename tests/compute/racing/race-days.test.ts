import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { crewDay } from '../../../src/compute/people/crew-day.ts'
import { intervalClock } from '../../../src/compute/racing/interval-clock.ts'
import { raceDayClock } from '../../../src/compute/racing/race-day-clock.ts'
import { raceDayHours, shareOfDay, trackTime } from '../../../src/compute/racing/race-day-hours.ts'
import { rainAndDrying } from '../../../src/compute/weather/rain-and-drying.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, IN, whole } from '../support/realistic.ts'

const min = 60
const h = 3600
const day = {
  first: 13 * h,
  races: 10,
  interval: 20 * min,
  warmUp: h,
  check: 20 * min,
  rounds: 2,
  round: 90 * min,
  soak: 30 * min,
  harrow: h,
  walk: 40 * min,
  pullBack: 90 * min,
}

describe('a race day by the clock', () => {
  it('counts back from the first race and on from the last: worked by hand', () => {
    // 13:00 less 60 and 20 min, two rounds of 90 + 30 min, an hour and 40 min; then 9 intervals,
    // one more, and 60 + 90 + 90 min.
    const at = raceDayClock.compute(day)
    expect(
      [at.start, at.look, at.horses, at.last, at.after, at.done].map((t) => numberOf(t) / min),
    ).toEqual([6 * 60, 11 * 60 + 40, 12 * 60, 16 * 60, 16 * 60 + 20, 20 * 60 + 20])
  })

  it('is never shorter with one race, one round or one minute more', () => {
    fc.assert(
      fc.property(whole(1, 14), whole(0, 2), whole(10, 30), (races, rounds, interval) => {
        const long = (more: object): number =>
          numberOf(
            raceDayClock.compute({
              ...day,
              round: 30 * min,
              races,
              rounds,
              interval: interval * min,
              ...more,
            }).long,
          )
        expect(long({ races: races + 1 })).toBeGreaterThan(long({}))
        expect(long({ rounds: rounds + 1 })).toBeGreaterThan(long({}))
        expect(long({ walk: day.walk + 1 })).toBeGreaterThan(long({}))
      }),
      FEW,
    )
  })

  it('refuses a day that would begin before midnight, and an end after the next', () => {
    expectRefused([raceDayClock.compute({ ...day, rounds: 8 }).start], /day before/)
    expectRefused([raceDayClock.compute({ ...day, first: 20 * h }).done], /after midnight/)
  })
})

describe('the interval by the minute', () => {
  const gap = {
    interval: 20 * min,
    clear: 8 * min,
    lap: 5 * min,
    laps: 2,
    whole: 8,
    rail: 800,
    speed: 2,
  }

  it('ends in time: the harrow is off before the track is called open', () => {
    const at = intervalClock.compute(gap)
    expect([at.clear, at.harrowed, at.open].map((t) => numberOf(t) / min)).toEqual([4, 14, 16])
    expect(at.left).toBe(6)
    // 7 minutes behind the first lap, at 800 m in 400 s: one lap.
    expect(at['water-laps']).toBe(1)
  })

  it('says what water fits in place of the harrow where none fits behind it', () => {
    // 12 minutes; a lap of the harrow takes 8, one of water 800 m at 2 m/s = 6 min 40 s.
    const at = intervalClock.compute({ ...gap, lap: 8 * min, laps: 1 })
    expect(at['water-laps']).toBe(0)
    expect(at['water-alone']).toBe(1)
    expect(numberOf(at['water-lap']) / min).toBeCloseTo(6 + 2 / 3, 9)
  })

  it('gives no water where there is no truck', () =>
    expectRefused([intervalClock.compute({ ...gap, speed: 0 })['water-laps']], /no water truck/))
})

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
  horses: 12 * h,
  first: 13 * h,
  last: 16 * h,
  interval: 20 * min,
  clear: 8 * min,
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

  it('leaves the track to horses while they are on it', () => {
    expect(trackTime(12 * h, 13 * h, base)).toBe(0)
    // Three races an hour, each with 20 − 8 minutes between.
    expect(trackTime(14 * h, 15 * h, base) / min).toBeCloseTo(36, 9)
    expect(trackTime(8 * h, 9 * h, base) / min).toBe(60)
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
            store: { full, recharge: 0.001 },
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

describe('hours of a crew', () => {
  it('fall with more people and rise with more races', () => {
    const crew = {
      harrow: h,
      pullBack: h,
      round: h,
      rounds: 4,
      walk: h,
      walkers: 2,
      first: 13 * h,
      after: 17 * h,
      people: 4,
    }
    expect(crewDay.compute({ ...crew, people: 8 }).each).toBeCloseTo(
      numberOf(crewDay.compute(crew).each) / 2,
      9,
    )
    expect(numberOf(crewDay.compute({ ...crew, after: 18 * h }).each)).toBeGreaterThan(
      numberOf(crewDay.compute(crew).each),
    )
  })
})

describe('rain', () => {
  const rain = {
    rain: 25.4e-3,
    open: 85,
    closed: 95,
    depth: 1.25 * IN,
    unitWeight: 1670,
    target: 0.08,
    held: 0.14,
    rate: 5e-3 / 86_400,
    daylight: 14 * h,
  }

  it('runs off as in Technical Release 55, table 2-1: 1 in on curve number 85 gives 0.17 in, on 95 gives 0.56 in', () => {
    // NRCS TR-55 (1986), table 2-1, printed to two places.
    const found = rainAndDrying.compute(rain)
    expect(numberOf(found['open-runs']) / IN).toBeCloseTo(0.17, 2)
    expect(numberOf(found['closed-runs']) / IN).toBeCloseTo(0.56, 2)
  })

  it('never soaks in more than fell or than there is room for, and never more into a closed track', () => {
    fc.assert(
      fc.property(whole(1, 100), whole(60, 98), (mm, number) => {
        const found = rainAndDrying.compute({ ...rain, rain: mm / 1000, open: number, closed: 99 })
        expect(numberOf(found['open-in'])).toBeLessThanOrEqual(
          Math.min(mm / 1000, numberOf(found.room)) + 1e-12,
        )
        expect(numberOf(found['closed-in'])).toBeLessThanOrEqual(numberOf(found['open-in']) + 1e-12)
        expect(numberOf(found['open-hours'])).toBeGreaterThanOrEqual(
          numberOf(found['closed-hours']) - 1e-6,
        )
      }),
      FEW,
    )
  })

  it('takes twice as long to dry where the air draws half as much', () => {
    expect(rainAndDrying.compute({ ...rain, rate: rain.rate / 2 })['open-hours']).toBeCloseTo(
      2 * numberOf(rainAndDrying.compute(rain)['open-hours']),
      6,
    )
  })
})
