import type { Problem } from '../../model/problem.ts'
import { problemAt } from '../../read/source-file.ts'
import type { Survey, SurveyRow } from '../../validate/imports/survey-table.ts'
import type { Engine } from '../engine/engine.ts'

/** Where nobody has taped the width, readings out to this are believed, m. */
const believedWidth = 25

/** The widest that the track is anywhere, m. */
const widest = (engine: Engine): number =>
  Math.max(
    ...(['oval.width.straights', 'oval.width.turns'] as const).map((path) => {
      const width = engine.facts.get(path)
      return width && width.provenance.kind !== 'typical' ? width.si : believedWidth
    }),
  )

function rowProblems(
  { file, at }: Survey,
  row: SurveyRow,
  { rail, width }: { readonly rail: number; readonly width: number },
): Problem[] {
  const { station, offset } = row.cells
  // A fault in a table belongs to the entry that names it.
  const path = at.path
  return [
    ...(row.station > rail + 1e-6
      ? [
          problemAt(
            file,
            station.place,
            'quantity/range',
            `station ${station.text} lies beyond the end of the rail`,
            {
              hint: 'stations are counted once around the rail, from the start of the home straight',
              path,
            },
          ),
        ]
      : []),
    ...(row.offset > width + 0.01
      ? [
          problemAt(
            file,
            offset.place,
            'quantity/range',
            `offset ${offset.text} lies outside the track`,
            { hint: 'offsets are measured from the rail, square across', path },
          ),
        ]
      : []),
  ]
}

/** Readings that were taken where this facility has no track. */
export function surveyPlaceProblems(surveys: readonly Survey[], engine: Engine): Problem[] {
  const rail = engine.si('rail.length')
  if (rail === undefined) return []
  const width = widest(engine)
  return surveys.flatMap((survey) =>
    survey.rows.flatMap((row) => rowProblems(survey, row, { rail, width })),
  )
}
