import { type Computed, type ComputeWords, computeFacility } from '../compute/compute-facility.ts'
import { placeProblems } from '../compute/place-problems.ts'
import { hasErrors, type Problem } from '../model/problem.ts'
import type { SourceTree } from '../read/read-yaml.ts'
import { checkFacility, type Facility } from '../validate/check-facility.ts'
import type { NameTargets } from '../validate/check-text.ts'
import { checkDates } from '../validate/facility/check-dates.ts'
import { checkNotes } from '../validate/facility/check-notes.ts'
import { checkRecord } from '../validate/facility/plausible/check-record.ts'
import { readImports, type TextNamed } from '../validate/imports/read-imports.ts'

/** What answers are held against. */
export type Against = {
  readonly textOf: TextNamed
  /** What the clock says, `YYYY-MM-DD`. */
  readonly today: string
  readonly words: ComputeWords
  readonly targets: NameTargets
}

export type Checked = {
  readonly facility: Facility | undefined
  /** Nothing where any error was found. */
  readonly computed: Computed | undefined
  /** The date of the manual: to which its file is up to date, else today. */
  readonly date: string
  readonly problems: readonly Problem[]
}

/** Checks a facility file with the tables that it names, from its schema to what is worked out. */
export function checkAnswers(tree: SourceTree, against: Against): Checked {
  const { today, textOf, words, targets } = against
  const checked = checkFacility(tree)
  const date = checked.value?.file['as-of'] ?? today
  if (!checked.value)
    return { facility: undefined, computed: undefined, date, problems: checked.problems }
  const read = readImports(checked.value, { textOf, date })
  const { facility } = read
  const problems = [
    ...checked.problems,
    ...checkDates(facility, { date, today }),
    ...checkRecord(facility, facility.imported.weather[0] ?? []),
    ...read.problems,
    ...checkNotes(facility, targets),
  ]
  if (hasErrors(problems)) return { facility, computed: undefined, date, problems }
  const computed = computeFacility(facility, words)
  const placed = placeProblems(facility, computed)
  return {
    facility,
    computed: hasErrors(placed) ? undefined : computed,
    date,
    problems: [...problems, ...placed],
  }
}
