import type { SieveTest } from '../../model/material-tests.ts'
import { calculation, isRefusal, type Refusal, refuse } from '../calculation.ts'
import { coarserThan, coefficients, grainSize, type Passing } from './gradation.ts'

/** Openings, m, that part gravel from sand and sand from fines (No. 4 and No. 200). */
const gravel = 0.00475
const fine = 0.000075

export const curveOf = (test: SieveTest): readonly Passing[] =>
  test.sieves.map(({ opening, passing }) => ({ opening, passing }))

const millimeters = (m: number): string => String(Number((m * 1000).toPrecision(3)))
const percent = (share: number): string => `${Number((share * 100).toPrecision(3))}`

/**
 * The reading of the curve at a share, with the two sieves beside it put in: a straight line on a
 * logarithmic scale of size.
 */
function sizeTex(share: number, curve: readonly Passing[]): string {
  const points = [...curve].sort((a, b) => a.opening - b.opening)
  const at = points.findIndex((p) => p.passing >= share)
  const [below, above] = [points[at - 1], points[at]]
  if (!below || !above || above.passing === below.passing) return `\\text{finer-${percent(share)}}`
  return `${millimeters(below.opening)}\\,\\text{mm} \\cdot \\left(\\frac{${millimeters(above.opening)}}{${millimeters(below.opening)}}\\right)^{\\frac{${percent(share)} - ${percent(below.passing)}}{${percent(above.passing)} - ${percent(below.passing)}}}`
}

const both = <R extends string>(
  a: number | Refusal<R>,
  b: number | Refusal<R>,
  of: (a: number, b: number) => number,
): number | Refusal<R> => (isRefusal(a) ? a : isRefusal(b) ? b : of(a, b))

/**
 * Share between two openings: what is coarser than the finer one, less what is coarser than the
 * coarser one.
 */
const between = (
  low: number,
  high: number,
  curve: readonly Passing[],
): number | Refusal<'size-outside-sieves'> => {
  // Above the coarsest sieve used everything has passed that ever will, when that sieve passes all.
  const top = curve.reduce((a, b) => (b.opening > a.opening ? b : a))
  const coarse = high >= top.opening && top.passing === 1 ? 0 : coarserThan(high, curve)
  return both(coarserThan(low, curve), coarse, (fines, coarser) => fines - coarser)
}

/**
 * What a sieve analysis of the cushion says.
 * @param test A sieve analysis with at least two sieves.
 */
export const sieveAnalysis = (test: SieveTest) => {
  const curve = curveOf(test)
  const size = { kind: 'sieveSize' } as const
  return calculation({
    id: 'sieve-analysis',
    sources: ['astm-d2487', 'astm-e11'],
    inputs: {
      grit: { symbol: 'd_g', kind: 'sieveSize', range: [0.0001, 0.02] },
    },
    outputs: {
      d10: { symbol: 'D_{10}', ...size, tex: sizeTex(0.1, curve) },
      d30: { symbol: 'D_{30}', ...size, tex: sizeTex(0.3, curve) },
      d60: { symbol: 'D_{60}', ...size, tex: sizeTex(0.6, curve) },
      uniformity: { symbol: 'C_u', kind: 'tenths', tex: '\\frac{@d60}{@d10}' },
      curvature: { symbol: 'C_c', kind: 'tenths', tex: '\\frac{@d30^2}{@d10\\,@d60}' },
      gravel: { symbol: 'p_G', kind: 'share', tex: '1 - p(4.75\\,\\text{mm})' },
      sand: { symbol: 'p_S', kind: 'share', tex: 'p(4.75\\,\\text{mm}) - p(0.075\\,\\text{mm})' },
      fines: { symbol: 'p_F', kind: 'share', tex: 'p(0.075\\,\\text{mm})' },
      share: { symbol: 'g', kind: 'share', tex: '1 - p(@grit)' },
    },
    told: { date: test.date },
    terms: ['finer-10', 'finer-30', 'finer-60'],
    refusals: ['sieves-miss-share', 'size-outside-sieves', 'sieves-miss-grit'],
    steps: {
      sieves: () => ({
        columns: [
          { symbol: 'd', kind: 'sieveSize' },
          { symbol: 'p(d)', kind: 'share' },
          { symbol: '\\ln d' },
        ],
        rows: curve.map(({ opening, passing }) => [opening, passing, Math.log(opening * 1000)]),
      }),
    },
    compute: ({ grit }) => {
      const [d10, d30, d60] = [grainSize(0.1, curve), grainSize(0.3, curve), grainSize(0.6, curve)]
      const [sand, coarser] = [between(fine, gravel, curve), coarserThan(fine, curve)]
      const found = isRefusal(d10)
        ? d10
        : isRefusal(d30)
          ? d30
          : isRefusal(d60)
            ? d60
            : coefficients(d10, d30, d60)
      const coefficient = (of: 'uniformity' | 'curvature') =>
        'refused' in found ? found : found[of]
      const fines = isRefusal(coarser) ? coarser : 1 - coarser
      return {
        d10,
        d30,
        d60,
        uniformity: coefficient('uniformity'),
        curvature: coefficient('curvature'),
        gravel: both(coarser, sand, (c, s) => Math.max(0, c - s)),
        sand,
        fines,
        share: isRefusal(coarserThan(grit, curve))
          ? refuse('sieves-miss-grit')
          : coarserThan(grit, curve),
      }
    },
  })
}
