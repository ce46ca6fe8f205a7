import type { Figure, Worksheet } from './figure.ts'
import type { ManualCalendar } from './manual/calendar.ts'
import type { ManualCard } from './manual/card.ts'
import type { ManualCaution } from './manual/caution.ts'
import type { ManualChapter } from './manual/chapter.ts'
import type { Charts } from './manual/charts.ts'
import type { Chooser } from './manual/chooser.ts'
import type { ManualCourse } from './manual/course.ts'
import type { Due } from './manual/due.ts'
import type { Contact, Emergency } from './manual/emergency.ts'
import type { GlanceGroup, Machine, ManualFacility, RaceDay } from './manual/facility.ts'
import type { ManualBooklet, ManualFieldBook } from './manual/field-book.ts'
import type { Finding, ToMeasure } from './manual/finding.ts'
import type { ManualForm } from './manual/form.ts'
import type { OvalGeometry } from './manual/geometry.ts'
import type { GlossaryTerm, TermPlaces } from './manual/glossary.ts'
import type { NamedQuantity } from './manual/named-quantity.ts'
import type { ManualProcedure } from './manual/procedure.ts'
import type { ManualReckoner } from './manual/reckoner.ts'
import type { ManualSchedule } from './manual/schedule.ts'
import type { SearchWords } from './manual/search-words.ts'
import type { ManualSection } from './manual/section.ts'
import type { CitedSource } from './manual/source.ts'
import type { CushionMap, GrainCurve } from './manual/survey.ts'
import type { ManualSymptom } from './manual/symptom.ts'
import type { ManualToday } from './manual/today.ts'
import type { ManualRecords } from './records.ts'

/** One facility's manual: plain data, everything that the pages say. */
export type Manual = {
  readonly facility: ManualFacility
  /** `YYYY-MM-DD`, given from outside. */
  readonly date: string
  readonly geometry: OvalGeometry
  readonly glance: readonly GlanceGroup[]
  readonly machines: readonly Machine[]
  readonly contacts: readonly Contact[]
  readonly emergency: Emergency
  readonly raceDays: readonly RaceDay[]
  /** What is due when, by date. */
  readonly due: readonly Due[]
  readonly sections: readonly ManualSection[]
  readonly procedures: readonly ManualProcedure[]
  /** All cautions that some procedure or card here uses. */
  readonly cautions: readonly ManualCaution[]
  readonly symptoms: readonly ManualSymptom[]
  /** How people are led to them. */
  readonly chooser: Chooser
  readonly chapters: readonly ManualChapter[]
  readonly terms: readonly GlossaryTerm[]
  /** What people look for, and where it is found. */
  readonly termIndex: readonly TermPlaces[]
  readonly reckoners: readonly ManualReckoner[]
  readonly schedules: readonly ManualSchedule[]
  /** What the board is asked for, on the page of the findings. */
  readonly board: readonly ManualSchedule[]
  /** Dates and hours by reader, those that were not over when the manual was made. */
  readonly calendars: readonly ManualCalendar[]
  readonly forms: readonly ManualForm[]
  /** What a phone has to know to keep records. */
  readonly records: ManualRecords
  /** Lessons by role. */
  readonly courses: readonly ManualCourse[]
  readonly cards: readonly ManualCard[]
  readonly fieldBook: ManualFieldBook
  /** Two pages for volunteers. */
  readonly handout: ManualBooklet
  /** How the search of the site understands people. */
  readonly search: SearchWords
  /** What a phone works out anew for a day. */
  readonly today: ManualToday
  readonly cushionMap: CushionMap | undefined
  readonly grainCurve: GrainCurve | undefined
  readonly charts: Charts
  readonly findings: readonly Finding[]
  /** What nobody has measured, the most telling first. */
  readonly toMeasure: readonly ToMeasure[]
  readonly quantities: Readonly<Record<string, NamedQuantity>>
  readonly worksheets: readonly Worksheet[]
  readonly figures: readonly Figure[]
  readonly sources: readonly CitedSource[]
}
