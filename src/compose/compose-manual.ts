import type { Computed } from '../compute/compute-facility.ts'
import type { Manual } from '../model/manual.ts'
import type { Facility } from '../validate/check-facility.ts'
import type { Library } from '../validate/check-library.ts'
import { composeCalendars } from './calendars/calendars.ts'
import { composeCards } from './cards.ts'
import { composeCharts } from './charts/charts.ts'
import { circumstancesOf } from './circumstances.ts'
import type { ComposeContext, ManualParts } from './context.ts'
import { composeDue } from './due.ts'
import { composeContacts } from './facility/contacts.ts'
import { composeEmergency } from './facility/emergency.ts'
import { composeFacility } from './facility/facility.ts'
import { composeGeometry } from './facility/geometry.ts'
import { composeGlance } from './facility/glance.ts'
import { composeMachines } from './facility/machines.ts'
import { composeRaceDays } from './facility/race-days.ts'
import { composeFieldBook, composeHandout } from './field-book.ts'
import { composeFigures, composeWorksheets } from './figures/figures.ts'
import { composeQuantities } from './figures/quantities.ts'
import { composeToMeasure } from './figures/to-measure.ts'
import { composeFindings } from './findings.ts'
import { composeForms } from './forms/forms.ts'
import { composeRecords } from './forms/records.ts'
import { composeGrainCurve } from './material/grain-curve.ts'
import { type Composers, composeParts } from './parts.ts'
import { composeCautions } from './procedures/cautions.ts'
import { composeChooser } from './procedures/chooser.ts'
import { composeProcedures } from './procedures/procedures.ts'
import { composeSections } from './procedures/sections.ts'
import { composeSymptoms } from './procedures/symptoms.ts'
import { composeReckoners } from './reckoners/reckoners.ts'
import { composeBoard, composeSchedules } from './schedules/schedules.ts'
import { composeSources, type SourceItem } from './sources.ts'
import { composeCushionMap } from './survey/cushion-map.ts'
import { composeChapters } from './texts/chapters.ts'
import { composeCourses } from './texts/courses.ts'
import { composeSearchWords } from './texts/search-words.ts'
import { composeTermIndex } from './texts/term-index.ts'
import { composeTerms } from './texts/terms.ts'
import { composeToday } from './today/today.ts'

export type ComposeInput = {
  readonly facility: Facility
  readonly computed: Computed
  readonly library: Library
  readonly sources: readonly SourceItem[]
  /** Build date, `YYYY-MM-DD`, from outside: the same input gives the same manual. */
  readonly date: string
}

/** Who composes which part of the manual. */
const composers: Composers<ManualParts, ComposeContext> = {
  facility: composeFacility,
  date: ({ date }) => date,
  geometry: composeGeometry,
  glance: composeGlance,
  machines: composeMachines,
  contacts: composeContacts,
  emergency: composeEmergency,
  raceDays: composeRaceDays,
  due: composeDue,
  sections: composeSections,
  procedures: composeProcedures,
  cautions: composeCautions,
  symptoms: composeSymptoms,
  chooser: composeChooser,
  chapters: composeChapters,
  terms: composeTerms,
  termIndex: composeTermIndex,
  reckoners: composeReckoners,
  schedules: composeSchedules,
  board: composeBoard,
  calendars: composeCalendars,
  forms: composeForms,
  records: composeRecords,
  courses: composeCourses,
  cards: composeCards,
  fieldBook: composeFieldBook,
  handout: composeHandout,
  search: composeSearchWords,
  today: composeToday,
  cushionMap: composeCushionMap,
  grainCurve: composeGrainCurve,
  charts: composeCharts,
  findings: composeFindings,
  toMeasure: composeToMeasure,
  worksheets: composeWorksheets,
  figures: composeFigures,
  sources: composeSources,
}

/**
 * Chooses what applies to this facility and puts its figures in place: one value that says all that
 * the pages say, each part of it worked out when it is first asked for.
 */
export function composeManual(input: ComposeInput): Manual {
  const { facility, computed, library, sources, date } = input
  const { engine, locale, known } = computed
  const here = circumstancesOf(facility, computed)
  const given = {
    facility,
    engine,
    locale,
    known,
    library,
    references: sources,
    date,
    here,
  }
  const parts = composeParts(composers, (parts) => ({ ...given, parts }))
  const names = Object.keys(composers) as (keyof ManualParts)[]
  const made = Object.fromEntries(names.map((name) => [name, () => parts[name]]))
  const whole = { ...made, quantities: () => composeQuantities(given) }
  return composeParts(whole as unknown as Composers<Manual, undefined>, () => undefined)
}
