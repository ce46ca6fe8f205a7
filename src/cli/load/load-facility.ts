import type { Problem } from '../../model/problem.ts'
import { checkFacility, type Facility } from '../../validate/check-facility.ts'
import { checkDates } from '../../validate/facility/check-dates.ts'
import { checkRecord } from '../../validate/facility/plausible/check-record.ts'
import { type FacilityRoot, loadImports } from './load-imports.ts'
import { type ReadFile, readTree } from './read-tree.ts'

/** The days that a manual may be dated by. */
type Days = {
  /** What the clock says, `YYYY-MM-DD`. */
  readonly today: string
  /** The date of the manual, where somebody asks for one. */
  readonly wanted: string | undefined
}

/** A facility file with all that it names, as it was read. */
export type LoadedFacility = {
  readonly facility: Facility | undefined
  /** The date of its manual: as asked for, else that to which its file is up to date, else today. */
  readonly date: string
  readonly problems: readonly Problem[]
  readonly files: readonly ReadFile[]
}

/** Reads and checks a facility file and all that it names. */
export async function loadFacility(
  folder: FacilityRoot,
  { today, wanted }: Days,
): Promise<LoadedFacility> {
  const tree = await readTree(folder.root, 'facility.yaml', folder.shown)
  const checked = tree.value ? checkFacility(tree.value) : { value: undefined, problems: [] }
  const date = wanted ?? checked.value?.file['as-of'] ?? today
  const tables = checked.value
    ? await loadImports(checked.value, folder, date)
    : { value: undefined, problems: [], files: [] }
  const odd = checked.value
    ? [
        ...checkDates(checked.value, { date, today }),
        ...checkRecord(checked.value, tables.value?.imported.weather[0] ?? []),
      ]
    : []
  return {
    facility: tables.value,
    date,
    problems: [...tree.problems, ...checked.problems, ...odd, ...tables.problems],
    files: [...tree.files, ...tables.files],
  }
}
