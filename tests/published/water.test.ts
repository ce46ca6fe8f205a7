import file from '../../shared/published/water.cases.json' with { type: 'json' }
import type { Case } from './case.ts'
import { checkCases } from './check-cases.ts'
import { airAndSun } from './water/air-and-sun.ts'
import { soilAndRain } from './water/soil-and-rain.ts'

checkCases(file as unknown as readonly Case[], {
  ...airAndSun,
  ...soilAndRain,
})
