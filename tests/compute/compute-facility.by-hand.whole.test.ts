import { describe, expect, it } from 'vitest'
import { demoManual } from '../support/demo.ts'

/**
 * Figures of two demos worked out again with plain arithmetic, from what their facility files say
 * and the usual values that their manuals print. No formula of the project is used here.
 */

/** How a figure is printed by the manual of a demo. */
async function printed(demo: string, id: string): Promise<string | undefined> {
  const { manual } = await demoManual(demo)
  const value = manual.figures.find((f) => f.id === id)?.value
  return value?.ok ? value.text : value?.reason
}

const whole = (x: number): string => Math.round(x).toLocaleString('en-US')
const upTo = (x: number, step: number): number => Math.ceil(x / step - 1e-9) * step
const clock = (minutes: number): string =>
  minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`

/** A lap (same unit) whose turns are run so far from the rail, and what the two turns cover. */
const lapAt = (straight: number, radius: number, out: number): number =>
  2 * straight + 2 * Math.PI * (radius + out)
const ringArea = (radius: number, width: number): number =>
  Math.PI * ((radius + width) ** 2 - radius ** 2)

describe('Larkmoor by hand', () => {
  // A lap of 2,640 ft three feet out, straights of 600 ft: what is left goes around the turns.
  const radius = (2640 - 2 * 600) / (2 * Math.PI) - 3
  const middle = lapAt(600, radius, 35)
  const area = 2 * 600 * 65 + ringArea(radius, 70)
  const cushion = (area * 1.25) / 12

  // Ten feet less a foot of overlap: 70 ft of turn take eight strips.
  const harrowMiles = (8 * middle) / 5280
  const harrowMinutes = (harrowMiles / (5 * 0.85)) * 60

  // Twenty feet of spray less one of overlap: four strips.
  const sprayFeet = 4 * middle
  const roundGallons = (0.05 / 12) * 20 * sprayFeet * (1728 / 231)
  const load = 2000 * 0.92
  const cycle = load / 250 + 5 + load / 172

  // Two treads of 8 in, 5 in apart, one inch over: two laps a group, six a block of 154 in.
  const rollLaps = 2 * 3 * Math.ceil((70 * 12 - 1) / (154 - 1))

  const rounds = async (id: string): Promise<string | undefined> => printed('larkmoor', id)

  it('has its area and the mass of its cushion', async () => {
    expect(await rounds('area.total')).toBe(`${whole(Math.round(area / 100) * 100)} ft²`)
    expect(await rounds('cushion.mass')).toBe(
      `${(Math.round((cushion * 104) / 2000 / 5) * 5).toLocaleString('en-US')} tons`,
    )
  })

  it('is harrowed and rolled in this time', async () => {
    expect(await rounds('harrow.time')).toBe(clock(upTo(harrowMinutes, 5)))
    expect(await rounds('roll.laps')).toBe(`${rollLaps}`)
    const rollMinutes = (((rollLaps / 2) * middle) / 5280 / (12 * 0.95)) * 60
    expect(await rounds('roll.time')).toBe(clock(upTo(rollMinutes, 5)))
  })

  it('takes so much water a round, in so many loads, each in its time', async () => {
    expect(await rounds('round.water')).toBe(
      `${upTo(roundGallons, 100).toLocaleString('en-US')} gal`,
    )
    expect(await rounds('round.loads')).toBe(`${Math.ceil(roundGallons / load)}`)
    expect(await rounds('cycle.time')).toBe(clock(upTo(cycle, 1)))
  })

  it('lacks so much water before it is at its moisture', async () => {
    const gallons = (cushion * 104 * (0.08 - 0.055)) / 62.428 / (231 / 1728)
    expect(await rounds('layer.water')).toBe(`${upTo(gallons, 100).toLocaleString('en-US')} gal`)
    const spread = (20 * sprayFeet) / area
    expect(await rounds('layer.loads')).toBe(`${Math.ceil((spread * gallons) / load)}`)
  })

  it('takes an inch of rain: cushion and base fill, some stands, the rest runs off', async () => {
    // Pores of 1.25 in at 104 lb/ft³ of grains at 168 lb/ft³, 85 % of them to fill, less 8 % held.
    const room = 0.85 * (1 - 104 / 168) * 1.25 - (0.08 * 1.25 * 104) / 62.428
    expect(await rounds('rain.room-early')).toBe(`${room.toFixed(2)} in`)
    expect(await rounds('rain.runs-early')).toBe(`${(1 - room - 0.34 - 0.05).toFixed(2)} in`)
  })

  it('costs so much on a race day', async () => {
    // Superintendent and harrow driver from 5:55 to 19:30, truck driver from 7:40, gate and two on
    // foot from 11:40 until 17:25.
    const hours = 2 * (13 + 35 / 60) + (11 + 50 / 60) + 3 * (5 + 45 / 60)
    const labor = hours * 22 * 1.0765
    expect(await rounds('race-day.labor')).toBe(`$${upTo(labor, 5).toLocaleString('en-US')}`)

    const water = 15 * load * 0.006
    expect(await rounds('race-day.day-water')).toBe(`$${upTo(water, 5)}`)
  })

  // Readings of 12 June at the rail, in the middle and outside, every 330 ft, in eighths of an inch.
  const eighths = [
    [16, 14, 11],
    [15, 13, 13],
    [16, 14, 17],
    [12, 9, 5],
    [13, 9, 10],
    [14, 13, 13],
    [16, 13, 12],
    [18, 14, 12],
  ]

  /** Their mean by ground, foot by foot along the rail: each foot has the nearest station's readings. */
  function meanByGround(): number {
    const rail = lapAt(600, radius, 0)
    const turn = Math.PI * radius
    let [ground, sum] = [0, 0]
    for (let foot = 0.5; foot < rail; foot++) {
      const nearest = eighths
        .map((_, i) => ({ i, off: Math.abs(foot - i * 330) }))
        .concat({ i: 0, off: rail - foot })
        .sort((a, b) => a.off - b.off)[0]?.i
      const onTurn = (at: number): boolean => (at > 600 && at < 600 + turn) || at > 1200 + turn
      const width = onTurn((nearest ?? 0) * 330) ? 70 : 65
      // Halfway between the offsets of 5, 32 and 60 ft; the last lane reaches to the outside.
      const lanes = [0, 18.5, 46, width]
      for (const lane of [0, 1, 2]) {
        const [from = 0, to = 0] = lanes.slice(lane)
        const longer = onTurn(foot) ? (radius + (from + to) / 2) / radius : 1
        ground += (to - from) * longer
        sum += (to - from) * longer * ((eighths[nearest ?? 0]?.[lane] ?? 0) / 8)
      }
    }
    return sum / ground
  }

  it('has a heap of what is too deep, and its loads', async () => {
    const cubicFeet = (area * (meanByGround() - 1.25)) / 12
    const tons = (cubicFeet * 104) / 2000
    expect(await rounds('deep.volume')).toBe(`${whole(cubicFeet / 27)} yd³`)
    expect(await rounds('deep.mass')).toBe(`${whole(tons)} tons`)
    expect(await rounds('deep.heap')).toBe(`${whole((tons * 2000) / 98 / 27)} yd³`)
    // Hauled wet, at 8 %, in beds of ten tons.
    expect(await rounds('deep.loads')).toBe(`${Math.ceil((tons * 1.08) / 10)}`)
  })

  it('has so much base in its levels, by the weight of packed base', async () => {
    // The manual's 74.5 yd³ of base at 132 lb/ft³.
    expect(await rounds('levels.base-mass')).toBe(`${whole((74.498 * 27 * 132) / 2000)} tons`)
  })
})

describe('Brambleford by hand', () => {
  const radius = 69
  const middle = lapAt(180, radius, 9)
  const area = 2 * 180 * 18 + ringArea(radius, 18)
  const tonnes = area * 0.04 * 1.28
  const load = 3500 * 0.9
  const sprayed = 4 * middle
  const litres = 1.2 * 5 * sprayed

  const rounds = async (id: string): Promise<string | undefined> => printed('brambleford', id)

  it('has its area and the mass of its cushion', async () => {
    expect(await rounds('area.total')).toBe(`${whole(Math.round(area / 100) * 100)} m²`)
    expect(await rounds('cushion.mass')).toBe(`${whole(tonnes)} t`)
  })

  it('is harrowed in this time', async () => {
    // 2.4 m less 0.3 m of overlap: 18 m take nine strips, at 8 km/h and 85 %.
    const minutes = ((9 * middle) / 1000 / (8 * 0.85)) * 60
    expect(await rounds('harrow.time')).toBe(clock(upTo(minutes, 5)))
  })

  it('takes so much water a round, in so many loads, each in its time', async () => {
    expect(await rounds('round.water')).toBe(`${upTo(litres, 100).toLocaleString('en-US')} L`)
    expect(await rounds('round.loads')).toBe(`${Math.ceil(litres / load)}`)
    expect(await rounds('cycle.time')).toBe(clock(upTo(load / 400 + 4 + load / 450, 1)))
  })

  it('needs this water on a race day, for three rounds', async () => {
    const loads = 3 * Math.ceil(litres / load)
    expect(await rounds('supply.need')).toBe(`${upTo(loads * load, 100).toLocaleString('en-US')} L`)
    // A hose of 400 L/min fills them.
    expect(await rounds('supply.hours')).toBe(`${((loads * load) / 400 / 60).toFixed(1)} h`)
  })

  it('has these hours on a race day', async () => {
    // Superintendent and harrow driver from 4:50 to 19:25, truck driver from 6:40, gate and two on
    // foot from 12:10 until 15:30.
    const hours = 2 * (14 + 35 / 60) + (12 + 45 / 60) + 3 * (3 + 20 / 60)
    expect(await rounds('race-day.hours')).toBe(`${hours.toFixed(1)} h`)
  })

  it('lacks so much stone for its depth, ordered with its water', async () => {
    const missing = area * 0.015 * 1.28
    expect(await rounds('hard.mass')).toBe(`${whole(missing)} t`)
    expect(await rounds('hard.order')).toBe(`${Math.ceil(missing * 1.05)} t`)
    expect(await rounds('hard.loads')).toBe(`${Math.ceil((missing * 1.05) / 20)}`)
  })

  it('lets this water through its drain in a burst', async () => {
    // 50 mm in an hour, 29 % of it in five minutes; 18 m wide, drains 25 m apart, 90 % runs off.
    const metersAnHour = 0.05 * 0.29 * 12
    // The sum is 1,174.5, halfway between two whole litres; the manual comes out a hair below.
    const litresAMinute = (0.9 * metersAnHour * 18 * 25 * 1000) / 60
    expect(await rounds('drain.flow')).toBe(`${whole(litresAMinute - 1e-6)} L/min`)
  })
})
