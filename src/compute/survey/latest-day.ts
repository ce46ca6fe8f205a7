import type { SurveyDay, SurveyKind } from '../../model/survey.ts'
import type { Survey } from '../../validate/imports/survey-table.ts'

/** The youngest survey of a kind, from all files of a facility. */
export const latestDay = (surveys: readonly Survey[], of: SurveyKind): SurveyDay | undefined =>
  surveys
    .filter((s) => s.of === of)
    .flatMap((s) => s.days)
    .sort((a, b) => a.date.localeCompare(b.date))
    .at(-1)
