import { calculation } from '../calculation.ts'
import {
  radiusInput,
  straightInput,
  widthStraightsInput,
  widthTurnsInput,
} from '../oval/oval-inputs.ts'
import { wholeUp } from '../whole-up.ts'
import { efficiencyInput, machinesInput, passesInput, speedInput } from './coverage-inputs.ts'
import { lapLengths } from './lap-lengths.ts'

/** Rolling a track with the tires of trucks. */
export const rolling = calculation({
  id: 'rolling',
  inputs: {
    straight: straightInput,
    radius: radiusInput,
    widthStraights: widthStraightsInput,
    widthTurns: widthTurnsInput,
    tireWidth: { symbol: 'w', kind: 'smallWidth', range: [0.05, 1.2] },
    tiresPerSide: { symbol: 'k', kind: 'count', range: [1, 2] },
    speed: speedInput,
    efficiency: efficiencyInput,
    machines: machinesInput,
    passes: passesInput,
  },
  outputs: {
    move: { symbol: 'm', kind: 'smallWidth', tex: '@tiresPerSide \\cdot @tireWidth' },
    laps: {
      symbol: 'N_l',
      kind: 'whole',
      tex: '@passes \\left\\lceil \\frac{\\max(@widthStraights,\\,@widthTurns)}{2 \\cdot @move} \\right\\rceil',
    },
    each: {
      symbol: 'N_1',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@laps}{@machines} \\right\\rceil',
    },
    distance: {
      symbol: 'D',
      kind: 'longDistance',
      tex: '@laps \\cdot \\bigl(2 \\cdot @straight + 2\\pi(@radius + \\tfrac{1}{2} \\cdot @widthTurns)\\bigr)',
    },
    time: {
      symbol: 't',
      kind: 'duration',
      tex: '\\frac{@distance}{@machines \\cdot @speed \\cdot @efficiency}',
    },
  },
  sources: ['geometry', 'common-practice'],
  compute: (x) => {
    const move = x.tiresPerSide * x.tireWidth
    const strips = wholeUp(Math.max(x.widthStraights, x.widthTurns) / (2 * move))
    const laps = x.passes * strips
    const distance =
      x.passes *
      lapLengths(x.straight, x.radius, x.widthTurns, strips).reduce((sum, lap) => sum + lap, 0)
    return {
      move,
      laps,
      each: wholeUp(laps / x.machines),
      distance,
      time: distance / (x.machines * x.speed * x.efficiency),
    }
  },
})
