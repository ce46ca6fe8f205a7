import * as z from 'zod'
import { binder, parts } from './words/binder.ts'
import { calendar } from './words/calendar.ts'
import { drawing, drawings, labels } from './words/drawings.ts'
import { live } from './words/live.ts'
import { maker } from './words/maker.ts'
import {
  capabilities,
  compass,
  groups,
  materials,
  ovals,
  ownership,
  provenance,
  roles,
  severities,
  signalMeanings,
  signals,
} from './words/names.ts'
import { facility, figure, months, reckoner, sources, units, worksheet } from './words/numbers.ts'
import { forms, plans, soils } from './words/plans.ts'
import { printing } from './words/printing.ts'
import { before, cards, fieldBook, procedure, sheet, training } from './words/procedure.ts'
import { records } from './words/records.ts'
import { choose, emergency, findings, safety, symptoms } from './words/safety.ts'
import { oneFile, pages, search, site } from './words/site.ts'
import { subjects } from './words/subjects.ts'
import { tables } from './words/tables.ts'
import { today } from './words/today.ts'

/**
 * All fixed words of the pages: what a reader would want to change stands in content, not in
 * templates. Code and templates name a word in full (`words.sheet.scan`), so that a search finds
 * where it is printed.
 */
export const words = z.strictObject({
  groups,
  roles,
  capabilities,
  provenance,
  signals,
  signalMeanings,
  severities,
  materials,
  ovals,
  ownership,
  compass,
  calendar,
  tables,
  procedure,
  before,
  sheet,
  figure,
  worksheet,
  binder,
  parts,
  site,
  oneFile,
  maker,
  printing,
  search,
  today,
  pages,
  subjects,
  symptoms,
  choose,
  findings,
  live,
  safety,
  emergency,
  training,
  records,
  units,
  sources,
  reckoner,
  cards,
  fieldBook,
  forms,
  plans,
  soils,
  months,
  facility,
  drawing,
  drawings,
  labels,
})

export type Words = z.infer<typeof words>
