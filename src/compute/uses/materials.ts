import { baseDensity } from '../materials/base-density.ts'
import { sieveAnalysis } from '../materials/sieve-analysis.ts'
import type { Readings } from './readings.ts'
import { fact, type Use, use } from './use.ts'

/** What laboratory and field tests say of cushion and base. */
export const materialUses = (
  known: ReadonlySet<string>,
  { sieve, densities }: Readings,
): readonly Use[] => [
  ...(sieve ? [use('sieve', sieveAnalysis(sieve), { grit: fact('cushion.grit.size') })] : []),
  ...(densities && known.has('base.proctor.highest') && known.has('base.proctor.best-moisture')
    ? [
        use('packing', baseDensity(densities), {
          highest: fact('base.proctor.highest'),
          best: fact('base.proctor.best-moisture'),
        }),
      ]
    : []),
]
