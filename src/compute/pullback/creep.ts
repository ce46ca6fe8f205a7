import { secondsPerDay } from '../../model/day.ts'
import { calculation } from '../calculation.ts'
import { workedWeightInput } from '../cushion/cushion-inputs.ts'
import { areaInput, railLengthInput } from '../oval/oval-inputs.ts'

/** Cushion that traffic and harrows bring down the slope to the rail in a day. */
export const creep = calculation({
  id: 'creep',
  title: 'Material that creeps to the rail',
  about:
    'A day of traffic leaves a lump along the rail, taken here as a triangle in section. What it comes to around the oval is what pulling back must carry up the slope again, and what packs into a ridge when it is left.',
  inputs: {
    rail: railLengthInput,
    area: areaInput,
    width: {
      symbol: 'w',
      label: "width of a day's lump",
      kind: 'smallWidth',
      range: [0.005, 0.7],
      howTo: 'Bare the strip at the rail in the morning; measure what lies on it in the evening.',
    },
    height: {
      symbol: 'h',
      label: "height of a day's lump",
      kind: 'fineDepth',
      range: [0.002, 0.2],
      howTo: 'Measure it in the evening with a ruler.',
    },
    unitWeight: workedWeightInput,
    days: {
      symbol: 'n',
      label: 'time left alone',
      kind: 'days',
      range: [secondsPerDay, 60 * secondsPerDay],
      howTo: 'Count the days.',
    },
  },
  outputs: {
    volume: {
      symbol: 'V',
      label: "volume of a day's lump around the oval",
      kind: 'heap',
      tex: '\\tfrac{1}{2} \\cdot @width \\cdot @height \\cdot @rail',
    },
    mass: {
      symbol: 'M',
      label: "dry mass of a day's lump around the oval",
      kind: 'patchMass',
      tex: '@volume \\cdot @unitWeight',
    },
    depth: {
      symbol: 'd',
      label: "depth of a day's lump spread back over the whole track",
      kind: 'thinDepth',
      tex: '\\frac{@volume}{@area}',
    },
    left: {
      symbol: 'V_n',
      label: 'volume when it is left alone so long',
      kind: 'heap',
      tex: '\\frac{@days}{1\\,\\text{day}} \\cdot @volume',
    },
    ridge: {
      symbol: 'h_n',
      label: 'height of the ridge by then',
      kind: 'fineDepth',
      tex: '@height \\sqrt{\\frac{@days}{1\\,\\text{day}}}',
    },
  },
  sources: ['geometry', 'common-practice'],
  compute: ({ rail, area, width, height, unitWeight, days }) => {
    const volume = 0.5 * width * height * rail
    return {
      volume,
      mass: volume * unitWeight,
      depth: volume / area,
      left: (days / secondsPerDay) * volume,
      ridge: height * Math.sqrt(days / secondsPerDay),
    }
  },
})
