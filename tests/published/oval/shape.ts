import { edgeRise } from '../../../src/compute/oval/edge-rise.ts'
import { lapExtra } from '../../../src/compute/oval/lap-extra.ts'
import { pylonCount } from '../../../src/compute/oval/pylon-count.ts'
import { shapeFromLapAndStraight } from '../../../src/compute/oval/shape-from-lap-and-straight.ts'
import { shapeFromStraightAndRadius } from '../../../src/compute/oval/shape-from-straight-and-radius.ts'
import { stationCount } from '../../../src/compute/oval/station-count.ts'
import { trackArea } from '../../../src/compute/oval/track-area.ts'
import { turnLength } from '../../../src/compute/oval/turn-length.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { numberOf } from '../../compute/support/answers.ts'
import type { Inputs, Runner } from '../case.ts'

const ft = (x: Inputs, name: string): number => x.si(`${name}_ft`, 'ft')

/** Lengths of a case in its own unit, feet or meters; one that it lacks is none. */
function lengthsOf(x: Inputs): { unit: 'ft' | 'm'; at: (name: string) => number } {
  const unit = x.has('S_m') ? 'm' : 'ft'
  const at = (name: string): number =>
    x.has(`${name}_${unit}`) ? x.si(`${name}_${unit}`, unit) : 0
  return { unit, at }
}

/** Lengths and areas of ovals. */
export const shape: Readonly<Record<string, Runner>> = {
  lap: (x) => {
    const { unit, at } = lengthsOf(x)
    const { lap } = shapeFromStraightAndRadius.compute({
      measuredStraight: at('S'),
      measuredRadius: at('R'),
      offset: at('offset'),
    })
    return { value: toUnit(numberOf(lap), unit) }
  },
  lap_extra: (x) => {
    const out = x.has('move_ft') ? ft(x, 'move') : ft(x, 'w')
    return { value: x.n('laps') * toUnit(numberOf(lapExtra.compute({ out }).extra), 'ft') }
  },
  radius: (x) => {
    const { unit, at } = lengthsOf(x)
    const { radius } = shapeFromLapAndStraight.compute({
      measuredLap: at('L'),
      measuredStraight: at('S'),
      offset: at('offset'),
    })
    return { value: toUnit(numberOf(radius), unit) }
  },
  strip: (x) => {
    const { total } = trackArea.compute({
      straight: ft(x, 'S'),
      radius: ft(x, 'R'),
      widthStraights: ft(x, 'W'),
      widthTurns: ft(x, 'W'),
    })
    return { value: toUnit(numberOf(total), 'ft2') }
  },
  rise: (x) => {
    const { turns } = edgeRise.compute({
      widthStraights: 1,
      crossFallStraights: 0.02,
      widthTurns: ft(x, 'W'),
      crossFallTurns: x.n('e'),
    })
    return { value: toUnit(numberOf(turns), 'ft') }
  },
  turn: (x) => ({
    value: numberOf(turnLength.compute({ radius: x.n('R_m'), offset: x.n('offset_m') }).length),
  }),
  pylons: (x) => ({
    value: pylonCount(
      ft(x, 'S'),
      ft(x, 'R'),
      x.si('turn_spacing_ft', 'ft'),
      x.si('straight_spacing_ft', 'ft'),
    ),
  }),
  stations: (x) => ({
    value: numberOf(stationCount.compute({ rail: ft(x, 'L'), spacing: ft(x, 'step') }).count),
  }),
}
