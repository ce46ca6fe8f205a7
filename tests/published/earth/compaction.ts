import { relativeCompaction } from '../../../src/compute/materials/compaction.ts'
import { dryDensity } from '../../../src/compute/materials/phase-relations.ts'
import type { Inputs, Runner } from '../case.ts'

const dry = (x: Inputs): number => dryDensity(x.n('wet'), x.n('w_pct') / 100)

export const compaction: Readonly<Record<string, Runner>> = {
  dry_density: (x) => ({ dry: dry(x) }),
  percent_proctor: (x) => ({ rc_pct: 100 * relativeCompaction(x.n('dry'), x.n('max_dry')) }),
  relative_compaction: (x) => ({
    dry: dry(x),
    rc_pct: 100 * relativeCompaction(dry(x), x.n('max_dry')),
  }),
}
