import type { DensityTest } from '../../model/material-tests.ts'
import { calculation } from '../calculation.ts'
import { relativeCompaction } from './compaction.ts'
import { dryDensity } from './phase-relations.ts'

/**
 * How well the base is packed, by density tests in the field against a laboratory's test of the
 * same material.
 * @param tests At least one.
 */
export const baseDensity = (tests: readonly DensityTest[]) =>
  calculation({
    id: 'base-density',
    sources: ['astm-d698', 'astm-d1557'],
    inputs: {
      highest: { symbol: '\\rho_{max}', kind: 'unitWeight', range: [1000, 2800] },
      best: { symbol: 'w_o', kind: 'fineShare', range: [0, 0.4] },
    },
    outputs: {
      tests: { symbol: 'n', kind: 'count', tex: '\\textstyle\\sum_i 1' },
      dry: {
        symbol: '\\bar\\rho_d',
        kind: 'unitWeight',
        tex: '\\frac{1}{n} \\textstyle\\sum_i \\frac{\\rho_i}{1 + w_i}',
      },
      relative: { symbol: 'RC', kind: 'share', tex: '\\frac{@dry}{@highest}', round: 'down' },
      lowest: {
        symbol: 'RC_{min}',
        kind: 'share',
        tex: '\\min_i \\frac{\\rho_i}{(1 + w_i)\\,@highest}',
        round: 'down',
      },
      moisture: {
        symbol: '\\bar w',
        kind: 'fineShare',
        tex: '\\frac{1}{n} \\textstyle\\sum_i w_i',
      },
      wetter: { symbol: '\\Delta w', kind: 'fineShare', tex: '@moisture - @best' },
    },
    steps: {
      tests: ({ highest }) => ({
        columns: [
          { symbol: '\\rho', kind: 'unitWeight' },
          { symbol: 'w', kind: 'fineShare' },
          { symbol: '\\frac{\\rho}{1 + w}', kind: 'unitWeight' },
          { symbol: 'RC', kind: 'share' },
        ],
        rows: tests.map((t) => {
          const dry = dryDensity(t.wet, t.moisture)
          return [t.wet, t.moisture, dry, relativeCompaction(dry, highest)]
        }),
      }),
    },
    compute: ({ highest, best }) => {
      const mean = (values: readonly number[]): number =>
        values.reduce((a, b) => a + b, 0) / values.length
      const dry = tests.map((t) => dryDensity(t.wet, t.moisture))
      const moisture = mean(tests.map((t) => t.moisture))
      return {
        tests: tests.length,
        dry: mean(dry),
        relative: relativeCompaction(mean(dry), highest),
        lowest: Math.min(...dry.map((d) => relativeCompaction(d, highest))),
        moisture,
        wetter: moisture - best,
      }
    },
  })
