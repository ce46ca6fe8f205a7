import type { SurveyDay } from '../../model/survey.ts'
import { calculation } from '../calculation.ts'
import { depthTargetInput } from '../cushion/cushion-inputs.ts'
import { depthSteps } from './survey-steps.ts'

/** Room for rounding: a reading exactly on the limit counts as within it. */
const hair = 1e-6

/**
 * Mean, spread and tolerance share of the depths of one day. The readings belong to the
 * calculation; what varies is what is wanted of them.
 * @param day A survey of cushion depth, at least two readings.
 */
export const depthSurvey = (day: SurveyDay) => {
  const depths = day.readings.map((r) => r.value)
  return calculation({
    id: 'depth-survey',
    sources: ['nist-151', 'common-practice'],
    inputs: {
      target: depthTargetInput,
      tolerance: { symbol: '\\delta', kind: 'fineDepth', range: [0, 0.1] },
    },
    outputs: {
      readings: { symbol: 'n', kind: 'count', tex: '\\textstyle\\sum_i 1' },
      total: { symbol: 'D', kind: 'depth', tex: '\\textstyle\\sum_i d_i' },
      mean: { symbol: '\\bar d', kind: 'fineDepth', tex: '\\frac{@total}{@readings}' },
      spread: {
        symbol: 's',
        kind: 'fineDepth',
        tex: '\\sqrt{\\frac{\\sum_i (d_i - \\bar d)^2}{n - 1}}',
      },
      least: { symbol: 'd_{min}', kind: 'fineDepth', tex: '\\min_i d_i' },
      most: { symbol: 'd_{max}', kind: 'fineDepth', tex: '\\max_i d_i' },
      within: {
        symbol: 'k',
        kind: 'count',
        tex: '\\textstyle\\sum_i \\left[|d_i - @target| \\le @tolerance\\right]',
      },
      share: { symbol: 'p', kind: 'share', tex: '\\frac{@within}{@readings}' },
    },
    told: { date: day.date },
    steps: {
      readings: ({ target, tolerance }) =>
        depthSteps(day, { within: (d) => Math.abs(d - target) <= tolerance + hair }),
    },
    compute: ({ target, tolerance }) => {
      const readings = depths.length
      const total = depths.reduce((sum, d) => sum + d, 0)
      const mean = total / readings
      const spread = Math.sqrt(depths.reduce((sum, d) => sum + (d - mean) ** 2, 0) / (readings - 1))
      const within = depths.filter((d) => Math.abs(d - target) <= tolerance + hair).length
      return {
        readings,
        total,
        mean,
        spread,
        least: Math.min(...depths),
        most: Math.max(...depths),
        within,
        share: within / readings,
      }
    },
  })
}
