import { calculation, refuse } from '../calculation.ts'
import {
  radiusInput,
  straightInput,
  widthStraightsInput,
  widthTurnsInput,
} from '../oval/oval-inputs.ts'
import { rollingPattern } from '../sealing/rolling-pattern.ts'
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
    gap: { symbol: 'g', kind: 'smallWidth', range: [0, 0.5] },
    track: { symbol: 'T', kind: 'smallWidth', range: [0.8, 3] },
    overlap: { symbol: 'o', kind: 'smallWidth', range: [0, 0.31] },
    speed: speedInput,
    efficiency: efficiencyInput,
    machines: machinesInput,
    passes: passesInput,
  },
  outputs: {
    move: { symbol: 'm', kind: 'smallWidth', tex: '@tireWidth - @overlap' },
    closing: {
      symbol: 'n_g',
      kind: 'whole',
      tex: '(@tiresPerSide - 1)\\left\\lceil \\frac{@gap}{@move} \\right\\rceil',
    },
    strip: {
      symbol: 'p',
      kind: 'smallWidth',
      tex: '@tiresPerSide \\cdot @tireWidth + (@tiresPerSide - 1) \\cdot @gap + @closing \\cdot @move',
    },
    next: {
      symbol: 'm_2',
      kind: 'smallWidth',
      tex: '@strip - @overlap - @closing \\cdot @move',
    },
    strips: {
      symbol: 'n_p',
      kind: 'whole',
      tex: '1 + \\max\\left(0,\\,\\left\\lceil \\frac{@track + @overlap - @strip}{@strip - @overlap} \\right\\rceil\\right)',
    },
    block: {
      symbol: 'n_b',
      kind: 'whole',
      tex: '@strips \\cdot (@closing + 1)',
    },
    width: {
      symbol: 'b',
      kind: 'smallWidth',
      tex: '@track + @strip + (@strips - 1) \\cdot (@strip - @overlap)',
    },
    jump: {
      symbol: 'm_3',
      kind: 'smallWidth',
      tex: '@width - @overlap - (@strips - 1) \\cdot (@strip - @overlap) - @closing \\cdot @move',
    },
    laps: {
      symbol: 'N_l',
      kind: 'whole',
      tex: '@passes \\cdot @block \\cdot \\left\\lceil \\frac{\\max(@widthStraights,\\,@widthTurns) - @overlap}{@width - @overlap} \\right\\rceil',
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
      tex: '\\frac{@each \\cdot @distance}{@laps \\cdot @speed \\cdot @efficiency}',
    },
  },
  sources: ['geometry', 'common-practice'],
  refusals: ['nothing-of-the-print-left'],
  compute: (x) => {
    if (x.overlap >= x.tireWidth) {
      const no = refuse('nothing-of-the-print-left')
      return {
        move: no,
        closing: no,
        strip: no,
        next: no,
        strips: no,
        block: no,
        width: no,
        jump: no,
        laps: no,
        each: no,
        distance: no,
        time: no,
      }
    }
    const pattern = rollingPattern({
      tread: x.tireWidth,
      perSide: x.tiresPerSide,
      gap: x.gap,
      track: x.track,
      overlap: x.overlap,
    })
    const wide = Math.max(x.widthStraights, x.widthTurns)
    const blocks = wholeUp((wide - x.overlap) / (pattern.width - x.overlap))
    const strips = pattern.laps * blocks
    const laps = x.passes * strips
    const distance =
      x.passes *
      lapLengths(x.straight, x.radius, x.widthTurns, strips).reduce((sum, lap) => sum + lap, 0)
    const each = wholeUp(laps / x.machines)
    return {
      move: pattern.step,
      closing: pattern.closing,
      strip: pattern.strip,
      next: pattern.next,
      strips: pattern.strips,
      block: pattern.laps,
      width: pattern.width,
      jump: pattern.jump,
      laps,
      each,
      distance,
      time: (each * distance) / (laps * x.speed * x.efficiency),
    }
  },
})
