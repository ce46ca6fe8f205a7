import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { balancedSpeed } from '../../../src/compute/oval/curve-balance.ts'
import { readingDistance } from '../../../src/compute/reading/reading-distance.ts'
import { drinkingWater } from '../../../src/compute/safety/drinking-water.ts'
import { heatShift } from '../../../src/compute/safety/heat-shift.ts'
import { letterHeight } from '../../../src/compute/safety/letter-height.ts'
import { lifting } from '../../../src/compute/safety/lifting.ts'
import { allClear, lightning } from '../../../src/compute/safety/lightning.ts'
import {
  noise,
  noiseDose,
  permittedByRule,
  recommended,
} from '../../../src/compute/safety/noise.ts'
import { powerLine } from '../../../src/compute/safety/power-line.ts'
import { eightHourMean, silica } from '../../../src/compute/safety/silica.ts'
import { truckOnBank } from '../../../src/compute/safety/truck-on-bank.ts'
import { heatRisk } from '../../../src/compute/weather/heat.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, IN, whole } from '../support/realistic.ts'

const hour = 3600

describe('a water truck on the bank', () => {
  const truck = { tank: 7, crossFall: 0.065, threshold: 0.35, radius: 69, offset: 0.9, pace: 1.8 }
  const used = (more: object, name: 'used' | 'moving' = 'used'): number =>
    numberOf(truckOnBank.compute({ ...truck, ...more })[name])

  it('has less stability left on a steeper bank, and with a lower threshold', () => {
    fc.assert(
      fc.property(whole(2, 150), whole(15, 79), (permille, percent) => {
        expect(used({ crossFall: (permille + 1) / 1000 })).toBeGreaterThan(
          used({ crossFall: permille / 1000 }),
        )
        expect(used({ threshold: percent / 100 })).toBeGreaterThan(
          used({ threshold: (percent + 1) / 100 }),
        )
      }),
      FEW,
    )
  })

  it('wins next to nothing back at walking pace, and all of it at the speed that the bank balances', () => {
    expect(used({}) - used({}, 'moving')).toBeLessThan(0.02)
    // Both are in proportion to the cosine of the bank, so the balance is the one of the turn
    // itself.
    expect(
      used(
        { pace: balancedSpeed(truck.crossFall, truck.radius + truck.offset) * (1 - 1e-9) },
        'moving',
      ),
    ).toBeCloseTo(0, 6)
  })

  it('is not answered for a speed at which it is thrown outward', () => {
    expectRefused([truckOnBank.compute({ ...truck, pace: 10 }).moving], /walking pace/)
  })

  it('uses all its stability on a bank that pulls as much as tips it over', () => {
    expect(used({ crossFall: Math.tan(Math.asin(0.15)), threshold: 0.15 })).toBeCloseTo(1, 12)
  })
})

describe('people in the heat', () => {
  it('work longer on each day than on the one before, never longer than the shift, and longer if they are used to heat', () => {
    fc.assert(
      fc.property(whole(1, 16), (hours) => {
        const at = heatShift.compute({ shift: hours * hour })
        const fresh = [at.first, at.second, at.third, at.fourth, at.fifth].map(numberOf)
        const used = [
          at.returning,
          at['returning-second'],
          at['returning-third'],
          at['returning-fourth'],
        ].map(numberOf)
        for (const days of [fresh, used]) expect(days).toEqual([...days].sort((a, b) => a - b))
        used.forEach((time, day) => expect(time).toBeGreaterThan(fresh[day] ?? Infinity))
        expect(fresh.at(-1)).toBe(hours * hour)
        expect(used.at(-1)).toBe(hours * hour)
      }),
      FEW,
    )
  })

  it('need drinks in proportion to their number, and a whole cup for a part of an interval', () => {
    fc.assert(
      fc.property(whole(10, 60), whole(1, 16), whole(1, 40), (minutes, hours, people) => {
        const at = (n: number) =>
          drinkingWater.compute({ every: minutes * 60, hours: hours * hour, people: n })
        expect(numberOf(at(2 * people).crew)).toBeCloseTo(2 * numberOf(at(people).crew), 9)
        expect(numberOf(at(1).cups) * minutes).toBeGreaterThanOrEqual(hours * 60)
        expect((numberOf(at(1).cups) - 1) * minutes).toBeLessThan(hours * 60)
      }),
      FEW,
    )
  })

  it('are at a higher risk at the ends of the bands only', () => {
    expect([80, 90.9, 91, 103, 103.1, 115, 115.1].map(heatRisk)).toEqual([1, 1, 2, 2, 3, 3, 4])
  })
})

describe('lightning', () => {
  const wait = 1800

  it('is as far away as it is long to thunder', () => {
    fc.assert(
      fc.property(whole(1, 60), (seconds) => {
        const away = (t: number): number =>
          numberOf(lightning.compute({ seconds: t, wait }).distance)
        expect(away(2 * seconds)).toBeCloseTo(2 * away(seconds), 9)
        // Sound in air between freezing and a hot day goes 331 to 355 m/s; the rule of five says
        // 322.
        expect(away(seconds)).toBeLessThan(331 * seconds)
        expect(away(seconds)).toBeGreaterThan(0.9 * 355 * seconds)
      }),
      FEW,
    )
  })

  it('starts the wait anew with each thunder, in whatever order they are written down', () => {
    fc.assert(
      fc.property(
        fc.array(whole(0, 86_400), { minLength: 1, maxLength: 8 }),
        whole(0, 86_400),
        (thunders, another) => {
          const clear = allClear(thunders, wait)
          expect(allClear([...thunders].reverse(), wait)).toBe(clear)
          expect(thunders.every((t) => clear - t >= wait)).toBe(true)
          expect(allClear([...thunders, another], wait)).toBe(Math.max(clear, another + wait))
        },
      ),
      FEW,
    )
  })
})

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

  it('let the mean of the day reach the limit after the time that is given', () => {
    fc.assert(
      fc.property(whole(1, 5000), (micrograms) => {
        const dust = micrograms * 1e-9
        const { action, limit, hourly } = silica.compute({ dust })
        expect(eightHourMean([{ dust, time: numberOf(limit) }])).toBeCloseTo(50e-9, 15)
        expect(numberOf(limit)).toBeCloseTo(2 * numberOf(action), 6)
        expect((numberOf(hourly) * numberOf(action)) / hour).toBeCloseTo(25e-9, 15)
      }),
      FEW,
    )
  })
})

describe('a lift', () => {
  const bag = { reach: 0.4, height: 0.5, travel: 0.7, twist: 0.5, often: 0.9, grip: 0.95, load: 20 }
  const limit = (more: object): number => numberOf(lifting.compute({ ...bag, ...more }).limit)

  it('may be lighter the farther out, the farther moved, the more twisted, the oftener, and the worse to grip', () => {
    fc.assert(
      fc.property(whole(10, 24), whole(10, 60), whole(0, 120), (out, far, degrees) => {
        const at = { reach: out * IN, travel: far * IN, twist: (degrees * Math.PI) / 180 }
        for (const worse of [
          { reach: (out + 1) * IN },
          { travel: (far + 1) * IN },
          { twist: ((degrees + 5) * Math.PI) / 180 },
          { often: 0.8 },
          { grip: 0.9 },
        ])
          expect(limit({ ...at, ...worse })).toBeLessThan(limit(at))
      }),
      FEW,
    )
  })

  it('may be heaviest at knuckle height', () => {
    const heights = Array.from({ length: 70 }, (_, inches) => limit({ height: inches * IN }))
    expect(heights.indexOf(Math.max(...heights))).toBe(30)
  })

  it('is never allowed above the constant of the equation, nor better for being nearer or shorter than ten inches', () => {
    expect(limit({ reach: 8 * IN })).toBe(limit({ reach: 10 * IN }))
    expect(limit({ travel: 0 })).toBe(limit({ travel: 10 * IN }))
    expect(
      limit({ reach: 0.2, height: 30 * IN, travel: 0, twist: 0, often: 1, grip: 1 }),
    ).toBeCloseTo(51 * 0.45359237, 12)
  })

  it('has an index of one at the limit, and is refused where nobody should lift', () => {
    expect(numberOf(lifting.compute({ ...bag, load: limit({}) }).index)).toBeCloseTo(1, 12)
    expectRefused(lifting.compute({ ...bag, often: 0 }), /nobody/)
  })
})

describe('an overhead line', () => {
  it('is kept farther away the higher its voltage, and nothing is said beyond the table', () => {
    const distance = (kV: number) => powerLine.compute({ voltage: kV * 1000 }).distance
    fc.assert(
      fc.property(whole(0, 999), (kV) => {
        expect(numberOf(distance(kV + 1))).toBeGreaterThanOrEqual(numberOf(distance(kV)))
      }),
      FEW,
    )
    // The value after "to" belongs to the row.
    expect(numberOf(distance(51))).toBeGreaterThan(numberOf(distance(50)))
    expectRefused([distance(1001)], /owner/)
  })
})

describe('letters of a sign', () => {
  const letters = (distance: number, which: 'message' | 'signal' | 'poor'): number =>
    numberOf(letterHeight.compute({ distance })[which])

  it('are read from as far as they were made for', () => {
    fc.assert(
      fc.property(whole(18, 400), (points) => {
        // Capitals of the sheets' face are 0.66 of the type size.
        expect(letters(readingDistance(points), 'message')).toBeCloseTo(
          (points * 0.66 * IN) / 72,
          12,
        )
      }),
      FEW,
    )
  })

  it('are higher for a signal word and in poor light, and never too small to read', () => {
    fc.assert(
      fc.property(whole(1, 300), (feet) => {
        const d = feet * 0.3048
        expect(letters(d, 'message')).toBeGreaterThanOrEqual(0.16 * IN)
        expect(letters(d, 'signal')).toBeGreaterThanOrEqual(letters(d, 'message'))
        expect(letters(d, 'poor')).toBeGreaterThan(letters(d, 'message'))
      }),
      FEW,
    )
  })
})
