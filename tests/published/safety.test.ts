import file from '../../shared/published/safety.cases.json' with { type: 'json' }
import type { Case } from './case.ts'
import { checkCases } from './check-cases.ts'
import { heatAtWork } from './safety/heat.ts'
import { letters } from './safety/letters.ts'
import { loads } from './safety/loads.ts'
import { noiseAndDust } from './safety/noise-and-dust.ts'
import { stormsAndLines } from './safety/storms-and-lines.ts'

checkCases(file as unknown as readonly Case[], {
  ...heatAtWork,
  ...letters,
  ...loads,
  ...noiseAndDust,
  ...stormsAndLines,
})
