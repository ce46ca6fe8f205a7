import file from '../../shared/published/earth.cases.json' with { type: 'json' }
import type { Case } from './case.ts'
import { checkCases } from './check-cases.ts'
import { compaction } from './earth/compaction.ts'
import { costs } from './earth/costs.ts'
import { curvesAndPower } from './earth/curves-and-power.ts'
import { production } from './earth/production.ts'
import { soils } from './earth/soils.ts'
import { volumes } from './earth/volumes.ts'

checkCases(file as unknown as readonly Case[], {
  ...compaction,
  ...costs,
  ...curvesAndPower,
  ...production,
  ...soils,
  ...volumes,
})
