import type { Problem } from '../model/problem.ts'
import type { Facility } from '../validate/check-facility.ts'
import type { Engine } from './engine/engine.ts'
import { shapeProblems } from './oval/shape-problems.ts'
import { stationProblems } from './oval/station-problems.ts'
import { surveyPlaceProblems } from './survey/survey-places.ts'

/** What can be judged only once the shape of the oval has been worked out. */
export const placeProblems = (
  facility: Facility,
  { engine }: { readonly engine: Engine },
): Problem[] => [
  ...shapeProblems(facility, engine),
  ...stationProblems(facility, engine),
  ...surveyPlaceProblems(facility.imported.surveys, engine),
]
