import type { GrainCurve } from '../../model/manual/survey.ts'
import { type ComposeContext, printed } from '../context.ts'

/** Shares finer, with the figure of the size that they are finer than. */
const sizes = [
  { name: 'D10', share: 0.1, figure: 'sieve.d10' },
  { name: 'D30', share: 0.3, figure: 'sieve.d30' },
  { name: 'D60', share: 0.6, figure: 'sieve.d60' },
] as const

/** The grain-size curve of the latest sieve analysis, as its drawing needs it. */
export function composeGrainCurve(context: ComposeContext): GrainCurve | undefined {
  const { engine, facility } = context
  const test = facility.tests.sieves.at(-1)
  const grit = engine.si('cushion.grit.size')
  if (!test || grit === undefined) return undefined
  return {
    points: test.sieves,
    grit,
    gritText: printed(grit, 'grain', context),
    sizes: sizes.flatMap(({ name, share, figure }) => {
      const size = engine.si(figure)
      return size === undefined ? [] : [{ name, share, size }]
    }),
  }
}
