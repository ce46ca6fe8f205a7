import { secondsPerDay } from '../../model/day.ts'
import { calculation, type InputSpec, type OutputSpec, refuse } from '../calculation.ts'
import { depthTargetInput, workedWeightInput } from '../cushion/cushion-inputs.ts'
import { drawInput, fillInput, solidsInput, waterInput } from './wetted-inputs.ts'
import { partWater, poreWater, waterOfMoisture } from './wetted-layer.ts'

const pressed = (symbol: string): InputSpec => ({ symbol, kind: 'share', range: [0, 1] })

/** The quick and the slow end of what cannot be known; the letter marks symbols of each. */
const ends = { early: 'q', late: 's' } as const
type End = keyof typeof ends

/** The output of one end; `*` stands for its name, `^` for its name as inputs have it. */
const output = (end: End, symbol: string, kind: OutputSpec['kind'], tex: string): OutputSpec => ({
  symbol: `${symbol}_${ends[end]}`,
  kind,
  tex: tex.replaceAll('*', end).replaceAll('^', end === 'early' ? 'Early' : 'Late'),
})

/** One end of the answer, in whole hours of daylight. */
const range = (symbol: string, tex: string, round: 'down' | 'up'): OutputSpec => ({
  symbol,
  kind: 'daylightHours',
  tex,
  round,
})

const toHeld = '(@held - @target)\\,\\frac{@depth\\,@unitWeight}{\\rho_{water}}'
const hours = (lost: string): string =>
  `\\frac{${lost}}{@draw^\\,@share\\,@rate \\cdot 1\\,\\text{day}}\\,@daylight`

/** Formulas by output, the same for both ends. */
const tex = {
  weight: '@unitWeight + @pressed^\\,(@packed - @unitWeight)',
  room: '\\max\\left(0,\\,@fill^\\,\\left(1 - \\frac{@weight-*}{@solids}\\right)\\frac{@depth\\,@unitWeight}{@weight-*} - @target\\,\\frac{@depth\\,@unitWeight}{\\rho_{water}}\\right)',
  base: `\\min\\left(@base^,\\,@rain - \\min(@rain,\\,@room-*) + \\max\\left(0,\\,\\min(@rain,\\,@room-*) - ${toHeld}\\right)\\right)`,
  layer: '\\min(@room-*,\\,@rain - @base-*)',
  stands: '\\min(@pond^,\\,@rain - @base-* - @layer-*)',
  runs: '@rain - @base-* - @layer-* - @stands-*',
  heel: hours(`@stands-* + \\max\\left(0,\\,@layer-* - ${toHeld}\\right)`),
  wanted: hours('@stands-* + @layer-*'),
}

/**
 * Where a rain goes on a cushion that is open, flattened or rolled, and how many hours of daylight
 * dry it: first until it is no moister than it holds drained, when the heel does, then until it has
 * the moisture wanted. What cannot be known without a test is given by its quick and its slow end.
 * Nothing is dried at night: a few percent of a day, of which dew gives some back.
 */
export const rainBalance = calculation({
  id: 'rain-balance',
  sources: ['fao-56', 'asce-77', 'rawls-1983', 'common-practice'],
  inputs: {
    rain: { symbol: 'P', kind: 'waterDepth', range: [0.0005, 0.3] },
    depth: depthTargetInput,
    unitWeight: workedWeightInput,
    packed: { symbol: '\\rho_p', kind: 'unitWeight', range: [960, 2724] },
    solids: solidsInput,
    target: { symbol: 'w', kind: 'fineShare', range: [0, 0.5] },
    held: { symbol: 'w_h', kind: 'fineShare', range: [0.01, 0.6] },
    pressedEarly: pressed('c_q'),
    pressedLate: pressed('c_s'),
    fillEarly: fillInput('a_q'),
    fillLate: fillInput('a_s'),
    baseEarly: waterInput('B_1'),
    baseLate: waterInput('B_2'),
    pondEarly: waterInput('D_1'),
    pondLate: waterInput('D_2'),
    drawEarly: drawInput('K_q'),
    drawLate: drawInput('K_s'),
    rate: { symbol: 'ET_o', kind: 'dailyWater', range: [1e-10, 3e-7] },
    share: { symbol: 's', kind: 'share', range: [0.1, 3] },
    daylight: { symbol: 'N', kind: 'hours', range: [3600, secondsPerDay] },
  },
  outputs: {
    'weight-early': output('early', '\\rho', 'unitWeight', tex.weight),
    'weight-late': output('late', '\\rho', 'unitWeight', tex.weight),
    'room-early': output('early', 'R', 'waterDepth', tex.room),
    'room-late': output('late', 'R', 'waterDepth', tex.room),
    'base-early': output('early', 'B', 'waterDepth', tex.base),
    'base-late': output('late', 'B', 'waterDepth', tex.base),
    'layer-early': output('early', 'I', 'waterDepth', tex.layer),
    'layer-late': output('late', 'I', 'waterDepth', tex.layer),
    'stands-early': output('early', 'D', 'waterDepth', tex.stands),
    'stands-late': output('late', 'D', 'waterDepth', tex.stands),
    'runs-early': output('early', 'Q', 'waterDepth', tex.runs),
    'runs-late': output('late', 'Q', 'waterDepth', tex.runs),
    'heel-quick': output('early', 't', 'hours', tex.heel),
    'heel-slow': output('late', 't', 'hours', tex.heel),
    'heel-early': range('t_1', '\\min(@heel-quick,\\,@heel-slow)', 'down'),
    'heel-late': range('t_2', '\\max(@heel-quick,\\,@heel-slow)', 'up'),
    'wanted-quick': output('early', 'T', 'hours', tex.wanted),
    'wanted-slow': output('late', 'T', 'hours', tex.wanted),
    'wanted-early': range('T_1', '\\min(@wanted-quick,\\,@wanted-slow)', 'down'),
    'wanted-late': range('T_2', '\\max(@wanted-quick,\\,@wanted-slow)', 'up'),
  },
  refusals: ['wanted-not-below-held', 'packed-not-between'],
  compute: (x) => {
    const material = { depth: x.depth, worked: x.unitWeight, solids: x.solids }
    const perMoisture = waterOfMoisture(material)
    const toHeld = (x.held - x.target) * perMoisture
    const endOf = (pressed: number, fill: number, base: number, hollows: number, draw: number) => {
      const weight = x.unitWeight + pressed * (x.packed - x.unitWeight)
      const pores = Math.max(0, poreWater(material, weight, fill) - x.target * perMoisture)
      const parts = partWater(x.rain, { pores, toHeld, base, hollows })
      const daylight = x.daylight / (draw * x.share * x.rate * secondsPerDay)
      const { layer, stands } = parts
      return {
        weight,
        pores,
        ...parts,
        heel: (stands + Math.max(0, layer - toHeld)) * daylight,
        wanted: (stands + layer) * daylight,
      }
    }
    const q = endOf(x.pressedEarly, x.fillEarly, x.baseEarly, x.pondEarly, x.drawEarly)
    const s = endOf(x.pressedLate, x.fillLate, x.baseLate, x.pondLate, x.drawLate)
    const packed = x.packed >= x.unitWeight && x.packed < x.solids
    const no = !packed
      ? refuse('packed-not-between')
      : toHeld <= 0
        ? refuse('wanted-not-below-held')
        : undefined
    return {
      'weight-early': q.weight,
      'weight-late': s.weight,
      'room-early': no ?? q.pores,
      'room-late': no ?? s.pores,
      'base-early': no ?? q.base,
      'base-late': no ?? s.base,
      'layer-early': no ?? q.layer,
      'layer-late': no ?? s.layer,
      'stands-early': no ?? q.stands,
      'stands-late': no ?? s.stands,
      'runs-early': no ?? q.runs,
      'runs-late': no ?? s.runs,
      'heel-quick': no ?? q.heel,
      'heel-slow': no ?? s.heel,
      // A little rain stands longer on what is pressed tight, so that either end may be the first.
      'heel-early': no ?? Math.min(q.heel, s.heel),
      'heel-late': no ?? Math.max(q.heel, s.heel),
      'wanted-quick': no ?? q.wanted,
      'wanted-slow': no ?? s.wanted,
      'wanted-early': no ?? Math.min(q.wanted, s.wanted),
      'wanted-late': no ?? Math.max(q.wanted, s.wanted),
    }
  },
})
