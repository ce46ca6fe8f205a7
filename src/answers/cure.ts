import { dataWith } from '../edit/data-with.ts'
import type { Problem } from '../model/problem.ts'
import type { Path, SourceTree } from '../read/read-yaml.ts'
import { statedShape } from '../validate/facility/check-oval.ts'
import type { FacilityFile } from '../validate/schemas/facility.ts'
import { keyOf, leaveOut } from './leave-out.ts'
import { dimensions, type StandIn, standInsFor, type Unnamed } from './stand-ins.ts'

/** What is done to answers so that something can be worked out from the rest. */
export type Cures = {
  /** What does not fit, by its path in the file (`keyOf`). */
  readonly out: ReadonlySet<string>
  readonly standIns: readonly StandIn[]
}

export const noCures: Cures = { out: new Set(), standIns: [] }

/** The tree with its cures; places and paths stay those of the file as it was written. */
export function curedTree(tree: SourceTree, { out, standIns }: Cures): SourceTree {
  const { data, before } = leaveOut(tree.data, out)
  return {
    file: tree.file,
    data: standIns.reduce((d, { path, value }) => dataWith(d, path, value)?.data ?? d, data),
    placeOf: (path) => tree.placeOf(before(path)),
    keyPlaceOf: (path) => tree.keyPlaceOf(before(path)),
    textPlaceOf: (path, part) => tree.textPlaceOf(before(path), part),
    lineAt: tree.lineAt,
    problem: (place, code, message, more) =>
      tree.problem(place, code, message, more?.path ? { ...more, path: before(more.path) } : more),
  }
}

const valueAt = (data: unknown, path: Path): unknown =>
  path.reduce<unknown>(
    (v, step) =>
      typeof v === 'object' && v !== null
        ? (v as Readonly<Record<string | number, unknown>>)[step]
        : undefined,
    data,
  )

/** Whether a path is another or lies below it. */
export const isWithin = (path: Path, outer: Path): boolean =>
  outer.every((step, i) => String(path[i]) === String(step))

/** Whether a path, or a group that it lies in, has been left out. */
export const isOut = (path: Path, { out }: Cures): boolean =>
  [...path, ''].some((_, i) => out.has(keyOf(path.slice(0, i))))

/** Answers as far as they have been cured. */
export type Patient = {
  readonly tree: SourceTree
  readonly cures: Cures
  /** What they say, where the schema lets it through. */
  readonly file: FacilityFile | undefined
  readonly unnamed: Unnamed
}

const without = ({ tree, cures }: Patient, ...paths: readonly Path[]): Cures => ({
  out: new Set([
    ...cures.out,
    ...paths.filter((p) => valueAt(tree.data, p) !== undefined).map(keyOf),
  ]),
  standIns: cures.standIns.filter((s) => !paths.some((p) => isWithin(s.path, p))),
})

/** Puts in what is missing at a path or below it; undefined where nothing can stand in there. */
function standingIn(at: Path, { tree, cures, file, unnamed }: Patient): Cures | undefined {
  const { data } = curedTree(tree, cures)
  const given = {
    metric: valueAt(data, ['units']) === 'metric',
    shape: file && statedShape(file),
  }
  const added = standInsFor(given, unnamed).filter(
    ({ path }) => isWithin(path, at) && valueAt(data, path) === undefined,
  )
  return added.length === 0 ? undefined : { ...cures, standIns: [...cures.standIns, ...added] }
}

const wholeOval = dimensions.map((key): Path => ['oval', key])

/** Leaves out the answer that a fault lies with, or puts in what is missing. */
export function cure({ code, path }: Problem, patient: Patient): Cures {
  const { tree, cures } = patient
  if (path === undefined) return without(patient, [])
  if (code === 'oval/too-little') return standingIn(['oval'], patient) ?? without(patient, [])
  const isStandIn = cures.standIns.some((s) => isWithin(path, s.path))
  // A stand-in that does not fit was made for an answer that nothing fits.
  if (isStandIn || (code === 'oval/impossible' && path.length === 1))
    return without(patient, ...wholeOval)
  const isThere = valueAt(tree.data, path) !== undefined && !isOut(path, cures)
  if (isThere) return without(patient, path)
  return standingIn(path, patient) ?? without(patient, path.slice(0, -1))
}
