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
  title: 'Rolling with truck tires',
  about:
    'Each lap rolls two bands, one under the tires of each side. The driver moves out by the width of one band every lap until the gap between the left and right tires is closed, then by the whole outside width of the truck, and begins again. It is the least number of laps: where the gap is no whole number of bands, some are rolled twice. Trucks share the laps.',
  inputs: {
    straight: straightInput,
    radius: radiusInput,
    widthStraights: widthStraightsInput,
    widthTurns: widthTurnsInput,
    tireWidth: {
      symbol: 'w',
      label: "width of one tire's print",
      kind: 'smallWidth',
      range: [0.05, 1.2],
      howTo: 'Measure a print on damp ground.',
    },
    tiresPerSide: {
      symbol: 'k',
      label: 'tires side by side on each side',
      kind: 'count',
      range: [1, 2],
      howTo: 'Count: one, or two for dual wheels.',
    },
    speed: speedInput,
    efficiency: efficiencyInput,
    machines: { ...machinesInput, label: 'trucks' },
    passes: passesInput,
  },
  outputs: {
    move: {
      symbol: 'm',
      label: 'how far to move out each lap',
      kind: 'smallWidth',
      tex: '@tiresPerSide \\cdot @tireWidth',
    },
    laps: {
      symbol: 'N_l',
      label: 'laps of all trucks together',
      kind: 'whole',
      tex: '@passes \\left\\lceil \\frac{\\max(@widthStraights,\\,@widthTurns)}{2 \\cdot @move} \\right\\rceil',
    },
    each: {
      symbol: 'N_1',
      label: 'laps for each truck',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{@laps}{@machines} \\right\\rceil',
    },
    distance: {
      symbol: 'D',
      label: 'distance driven by all trucks together',
      kind: 'longDistance',
      tex: '@laps \\cdot \\bigl(2 \\cdot @straight + 2\\pi(@radius + \\tfrac{1}{2} \\cdot @widthTurns)\\bigr)',
    },
    time: {
      symbol: 't',
      label: 'for all laps',
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
