import { toUnit } from '../../model/quantity/format-quantity.ts'
import { calculation } from '../calculation.ts'

/**
 * Kinematic-wave constant of the manual for feet, inches an hour and minutes. A foot of width and of
 * length under an inch an hour gives 144/231 gal in 60 min: 0.01039 gal/min.
 */
const minutes = 0.933

/** The shortest time for which tables give rain; a shorter way to the rail takes no harder rain. */
const burst = 300

/** Rain that runs off a sealed track: how soon and how much reaches the rail. */
export const sheetFlow = calculation({
  id: 'sheet-flow',
  inputs: {
    length: { symbol: 'L', kind: 'width', range: [2, 46], formulaUnit: 'ft' },
    slope: { symbol: 's', kind: 'fineShare', range: [0.002, 0.16], formulaUnit: '' },
    hourRain: { symbol: 'P_1', kind: 'waterDepth', range: [0.0025, 0.2], formulaUnit: 'in' },
    burstShare: { symbol: 'r', kind: 'share', range: [0.1, 0.6], formulaUnit: '' },
    roughness: { symbol: 'n', kind: 'ratio', range: [0.01, 0.5], formulaUnit: '' },
    runoff: { symbol: 'C', kind: 'share', range: [0.05, 1], formulaUnit: '' },
    rail: { symbol: 'L_1', kind: 'distance', range: [1, 500], formulaUnit: 'ft' },
    widthTurns: { symbol: 'W_t', kind: 'width', range: [2, 46], formulaUnit: 'ft' },
    radius: { symbol: 'R', kind: 'distance', range: [15, 1000], formulaUnit: 'ft' },
  },
  outputs: {
    rate: {
      symbol: 'i',
      kind: 'rainRate',
      formulaUnit: 'in/h',
      tex: '12 \\cdot @burstShare \\cdot @hourRain',
    },
    time: {
      symbol: 't',
      kind: 'minutes',
      tex: '0.933\\,\\frac{(@roughness \\cdot @length)^{0.6}}{@rate^{0.4} \\cdot @slope^{0.3}}\\,\\text{min}',
    },
    flow: {
      symbol: 'Q',
      kind: 'waterFlow',
      tex: '0.01039 \\cdot @runoff \\cdot @rate \\cdot @length \\cdot @rail\\,\\text{gal/min}',
    },
    // Behind each foot of rail a turn widens outward: a ring of the turn's width.
    'turn-flow': {
      symbol: 'Q_t',
      kind: 'waterFlow',
      tex: '0.01039 \\cdot @runoff \\cdot @rate \\cdot @widthTurns\\left(1 + \\frac{@widthTurns}{2 \\cdot @radius}\\right) \\cdot @rail\\,\\text{gal/min}',
    },
  },
  sources: ['fhwa-hec-22', 'nrcs-tr-55', 'weather-bureau-tp-40'],
  compute: ({
    length,
    slope,
    hourRain,
    burstShare,
    roughness,
    runoff,
    rail,
    widthTurns,
    radius,
  }) => {
    const rate = (burstShare * hourRain) / burst
    return {
      rate,
      time:
        60 *
        minutes *
        ((roughness * toUnit(length, 'ft')) ** 0.6 / (toUnit(rate, 'in/h') ** 0.4 * slope ** 0.3)),
      flow: runoff * rate * length * rail,
      'turn-flow': runoff * rate * widthTurns * (1 + widthTurns / (2 * radius)) * rail,
    }
  },
})
