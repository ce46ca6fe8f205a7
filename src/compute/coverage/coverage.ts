import { calculation, refuse } from '../calculation.ts'
import {
  radiusInput,
  straightInput,
  widthStraightsInput,
  widthTurnsInput,
} from '../oval/oval-inputs.ts'
import { wholeUp } from '../whole-up.ts'
import { efficiencyInput, machinesInput, passesInput, speedInput } from './coverage-inputs.ts'
import { fieldCapacity } from './field-capacity.ts'
import { lapLengths } from './lap-lengths.ts'

/**
 * Laps, distance and time to work the track with any implement, lap by lap from the rail to the
 * outside.
 */
export const coverage = calculation({
  id: 'coverage',
  inputs: {
    straight: straightInput,
    radius: radiusInput,
    widthStraights: widthStraightsInput,
    widthTurns: widthTurnsInput,
    width: { symbol: 'w', kind: 'width', range: [0.2, 20] },
    angle: { symbol: '\\theta', kind: 'angle', range: [0, 1.3] },
    overlap: { symbol: 'b', kind: 'width', range: [0, 5] },
    speed: speedInput,
    efficiency: efficiencyInput,
    machines: machinesInput,
    passes: passesInput,
  },
  outputs: {
    effective: { symbol: 'w_e', kind: 'width', tex: '@width \\cos(@angle) - @overlap' },
    rate: {
      symbol: 'a',
      kind: 'landRate',
      tex: '@machines \\cdot @speed \\cdot @effective \\cdot @efficiency',
    },
    strips: {
      symbol: 'n',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{\\max(@widthStraights,\\,@widthTurns)}{@effective} \\right\\rceil',
    },
    laps: { symbol: 'N_l', kind: 'whole', tex: '@passes \\cdot @strips' },
    distance: {
      symbol: 'D',
      kind: 'longDistance',
      tex: '@laps \\cdot \\bigl(2 \\cdot @straight + 2\\pi(@radius + \\tfrac{1}{2} \\cdot @widthTurns)\\bigr)',
    },
    time: {
      symbol: 't',
      kind: 'duration',
      tex: '\\left\\lceil \\frac{@laps}{@machines} \\right\\rceil \\frac{@distance}{@laps \\cdot @speed \\cdot @efficiency}',
    },
  },
  sources: ['geometry', 'navedtra-14081', 'isu-pm-696'],
  refusals: ['overlap-too-wide'],
  compute: (x) => {
    const effective = x.width * Math.cos(x.angle) - x.overlap
    if (!(effective > 0)) {
      const none = refuse('overlap-too-wide')
      return { effective: none, rate: none, strips: none, laps: none, distance: none, time: none }
    }
    const strips = wholeUp(Math.max(x.widthStraights, x.widthTurns) / effective)
    const once = lapLengths(x.straight, x.radius, x.widthTurns, strips).reduce(
      (sum, lap) => sum + lap,
      0,
    )
    const laps = x.passes * strips
    const distance = x.passes * once
    // Each machine drives whole laps: the time is that of whoever has the most of them.
    const share = wholeUp(laps / x.machines) / laps
    return {
      effective,
      rate: x.machines * fieldCapacity(x.speed, effective, x.efficiency),
      strips,
      laps,
      distance,
      time: (share * distance) / (x.speed * x.efficiency),
    }
  },
})
