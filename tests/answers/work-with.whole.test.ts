import { describe } from 'vitest'
import { describeOneFault } from './support/one-fault.ts'

describe('one fault', () => describeOneFault(1))
