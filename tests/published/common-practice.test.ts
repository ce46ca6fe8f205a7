import { describe, expect, it } from 'vitest'
import type { FigureId } from '../../src/compute/uses/ids.ts'
import { toUnit } from '../../src/model/quantity/format-quantity.ts'
import { everything, sampleEngine } from '../compute/support/sample-engine.ts'

/** A figure of a half mile of stone dust with the usual machines, in a unit. */
const usual = (
  figure: FigureId,
  unit: string,
  known: Readonly<Record<string, string>> = everything,
): number => {
  const value = sampleEngine(known).engine.figure(figure)?.value
  if (!value?.ok) throw new Error(`${figure}: ${value?.reason ?? 'no such figure'}`)
  return toUnit(value.si, unit)
}

const expectBetween = (x: number, low: number, high: number): void => {
  expect(x).toBeGreaterThanOrEqual(low)
  expect(x).toBeLessThanOrEqual(high)
}

// Rules of thumb of the trade, published nowhere: they show that the figures are of the right size,
// and no more.
describe('common practice, no source', () => {
  /** Front tires that roll what twin rear tires leave between them: one print on each side. */
  const filled = {
    ...everything,
    'gear.roll-tires.tire-width': '21 in',
    'gear.roll-tires.tires-per-side': '1',
  }

  it('rolling a half mile with a pair of trucks takes some thirty minutes where front tires fill the gap of the twins, and up to an hour where they do not', () => {
    expectBetween(usual('roll.time', 'min', filled), 25, 40)
    expectBetween(usual('roll.time', 'min'), 40, 60)
  })

  it('one truck alone takes about an hour, and single tires twice as long as twins', () => {
    expectBetween(usual('roll.time', 'min', { ...filled, 'gear.roll-tires.count': '1' }), 50, 80)
    const single = { ...everything, 'gear.roll-tires.tires-per-side': '1' }
    expectBetween(usual('roll.time', 'min', single) / usual('roll.time', 'min'), 1.6, 2.2)
  })

  it('a drum takes longer than two trucks', () => {
    expect(usual('drum.time', 'min')).toBeGreaterThan(2 * usual('roll.time', 'min'))
  })

  it("a day's lump of 1.7 to 2.9 in is a few wheelbarrows to a small load, and under a sixteenth of an inch in the pull-back strip", () => {
    for (const width of ['1.7 in', '2.3 in', '2.9 in']) {
      const known = { ...everything, 'creep.width': width }
      expectBetween(usual('creep.volume', 'yd3', known), 0.5, 1)
      expectBetween(usual('creep.mass', 'ton', known), 0.5, 2)
      expect(
        usual('creep.volume', 'ft3', known) / (usual('rail.length', 'ft', known) * 10),
      ).toBeLessThan(1 / 16 / 12)
    }
  })

  it('pulling back next to the rail takes one to two hours, and a week left alone is one truckload', () => {
    expectBetween(usual('grade-band.time', 'h'), 0.75, 2)
    expectBetween(usual('creep.left', 'yd3'), 3, 8)
  })

  it('an inch of ridge holds water four feet out on a straight of 2 %', () => {
    expectBetween(usual('ridge.dam-width', 'ft'), 4, 4.5)
  })

  it('sealing is begun one to two hours before rain', () => {
    expectBetween(usual('seal.start-before', 'min'), 60, 120)
  })

  it('tires press harder than a rented drum', () => {
    expect(usual('press.least', '')).toBeGreaterThan(2)
  })

  it('harrowing the whole width does not fit between two races with one harrow', () => {
    expect(usual('harrow.time', 'min')).toBeGreaterThan(20)
  })

  it('a quarter inch over a half mile takes some 200 tons, about ten truckloads', () => {
    expectBetween(usual('quarter.mass', 'ton'), 150, 250)
    expectBetween(usual('quarter.loads', ''), 8, 13)
  })

  it('three people mend the example washout in about an hour', () => {
    expectBetween(usual('washout.time', 'h', { ...everything, 'crew.people': '3' }), 0.75, 1.25)
  })

  it('a third of the fill of a washout three inches deep would be too thin if it were left as a V', () => {
    expect(usual('washout.thin-share', '')).toBeCloseTo(1 / 3, 2)
  })
})
