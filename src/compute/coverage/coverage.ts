import { calculation, refuse } from '../calculation.ts'
import {
  radiusInput,
  straightInput,
  widthStraightsInput,
  widthTurnsInput,
} from '../oval/oval-inputs.ts'
import { wholeUp } from '../whole-up.ts'
import { efficiencyInput, machinesInput, passesInput, speedInput } from './coverage-inputs.ts'
import { lapLengths } from './lap-lengths.ts'

/**
 * Laps, distance and time to work the track with any implement, lap by lap from the rail to the
 * outside.
 */
export const coverage = calculation({
  id: 'coverage',
  title: 'Working the whole width',
  about:
    'One lap for each strip, from the rail to the outside. Outer laps are longer, so the distance is that of the middle lap times the number of laps. Strips are spread evenly, so that the last one ends at the edge. Where straights and turns differ in width, the wider one sets the number of strips. An angled blade covers less than its length, and neighboring strips overlap.',
  inputs: {
    straight: straightInput,
    radius: radiusInput,
    widthStraights: widthStraightsInput,
    widthTurns: widthTurnsInput,
    width: {
      symbol: 'w',
      label: 'working width',
      kind: 'width',
      range: [0.2, 20],
      howTo: 'Measure the part that works the ground.',
    },
    angle: {
      symbol: '\\theta',
      label: 'angle of the blade from square to travel',
      kind: 'angle',
      range: [0, 1.3],
      howTo: 'Measure on the ground, or read the circle.',
    },
    overlap: {
      symbol: 'b',
      label: 'overlap of neighboring strips',
      kind: 'width',
      range: [0, 5],
      howTo: 'A choice of the operator.',
    },
    speed: speedInput,
    efficiency: efficiencyInput,
    machines: machinesInput,
    passes: passesInput,
  },
  outputs: {
    effective: {
      symbol: 'w_e',
      label: 'width that one lap adds',
      kind: 'width',
      tex: '@width \\cos(@angle) - @overlap',
    },
    strips: {
      symbol: 'n',
      label: 'strips side by side',
      kind: 'whole',
      tex: '\\left\\lceil \\frac{\\max(@widthStraights,\\,@widthTurns)}{@effective} \\right\\rceil',
    },
    laps: { symbol: 'N_l', label: 'laps in all', kind: 'whole', tex: '@passes \\cdot @strips' },
    distance: {
      symbol: 'D',
      label: 'distance driven',
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
  sources: ['geometry', 'navedtra-14081', 'isu-pm-696'],
  compute: (x) => {
    const effective = x.width * Math.cos(x.angle) - x.overlap
    if (!(effective > 0)) {
      const none = refuse('the overlap leaves nothing of the working width')
      return { effective: none, strips: none, laps: none, distance: none, time: none }
    }
    const strips = wholeUp(Math.max(x.widthStraights, x.widthTurns) / effective)
    const once = lapLengths(x.straight, x.radius, x.widthTurns, strips).reduce(
      (sum, lap) => sum + lap,
      0,
    )
    const distance = x.passes * once
    return {
      effective,
      strips,
      laps: x.passes * strips,
      distance,
      time: distance / (x.machines * x.speed * x.efficiency),
    }
  },
})
