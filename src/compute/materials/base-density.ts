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
    title: 'How well the base is packed',
    about:
      'Dry density in the field as a share of the highest that the laboratory reached. Say always which laboratory test it was: a share of the standard test is not one of the modified. Material that is much wetter or drier than best will not pack, however often it is rolled.',
    sources: ['astm-d698', 'astm-d1557'],
    inputs: {
      highest: {
        symbol: '\\rho_{max}',
        label: 'highest dry density of the laboratory test',
        kind: 'unitWeight',
        range: [1000, 2800],
      },
      best: {
        symbol: 'w_o',
        label: 'moisture at which it was reached',
        kind: 'fineShare',
        range: [0, 0.4],
      },
    },
    outputs: {
      tests: { symbol: 'n', label: 'places tested', kind: 'count', tex: '\\textstyle\\sum_i 1' },
      dry: {
        symbol: '\\bar\\rho_d',
        label: 'mean dry density',
        kind: 'unitWeight',
        tex: '\\frac{1}{n} \\textstyle\\sum_i \\frac{\\rho_i}{1 + w_i}',
      },
      relative: {
        symbol: 'RC',
        label: 'relative compaction, mean',
        kind: 'share',
        tex: '\\frac{@dry}{@highest}',
        round: 'down',
      },
      lowest: {
        symbol: 'RC_{min}',
        label: 'relative compaction at the softest place',
        kind: 'share',
        tex: '\\min_i \\frac{\\rho_i}{(1 + w_i)\\,@highest}',
        round: 'down',
      },
      moisture: {
        symbol: '\\bar w',
        label: 'mean moisture of the base',
        kind: 'fineShare',
        tex: '\\frac{1}{n} \\textstyle\\sum_i w_i',
      },
      wetter: {
        symbol: '\\Delta w',
        label: 'wetter than best for packing (drier when below zero)',
        kind: 'fineShare',
        tex: '@moisture - @best',
      },
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
