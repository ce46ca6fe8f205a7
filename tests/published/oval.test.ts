import file from '../../shared/published/oval.cases.json' with { type: 'json' }
import type { Case } from './case.ts'
import { checkCases } from './check-cases.ts'
import { shape } from './oval/shape.ts'
import { track } from './oval/track.ts'

checkCases(file as unknown as readonly Case[], { ...shape, ...track })
