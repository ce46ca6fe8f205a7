import type { PageFamily, SitePage } from './page.ts'
import { facility } from './pages/facility.ts'
import { findings } from './pages/findings.ts'
import { forms } from './pages/forms.ts'
import { learn } from './pages/learn.ts'
import { eachWorksheet, numbers } from './pages/numbers.ts'
import { eachPlan, plans } from './pages/plans.ts'
import { eachProcedure, procedures } from './pages/procedures.ts'
import { reckoners } from './pages/reckoners.ts'
import { records } from './pages/records.ts'
import { emergency, hazards, safety } from './pages/safety.ts'
import { search } from './pages/search.ts'
import { symptoms } from './pages/symptoms.ts'
import { terms } from './pages/terms.ts'
import { today } from './pages/today.ts'

/** Every page of the site beside the first, in the order of the menu. */
export const allPages: readonly SitePage[] = [
  symptoms,
  procedures,
  today,
  plans,
  forms,
  records,
  numbers,
  reckoners,
  safety,
  emergency,
  hazards,
  learn,
  findings,
  facility,
  terms,
  search,
]

export const pageFamilies: readonly PageFamily[] = [eachProcedure, eachPlan, eachWorksheet]
