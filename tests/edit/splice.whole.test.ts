import { describeSplices } from '../support/splices.ts'

describeSplices(7)
