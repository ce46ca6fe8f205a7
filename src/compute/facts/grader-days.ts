import { dayNumber, secondsPerDay } from '../../model/day.ts'
import { type FactPath, factSpec } from '../../model/fact-spec.ts'
import type { Place } from '../../model/problem.ts'
import { usualValue } from '../../model/usual-value.ts'
import type { SourceTree } from '../../read/read-yaml.ts'
import type { FacilityFile } from '../../validate/schemas/facility.ts'
import type { KnownValue } from './known.ts'

type Known = Map<string, KnownValue>

/** What the file says of a fact so far, else what is usual, SI. */
function siOf(path: FactPath, file: FacilityFile, known: Known): number | undefined {
  const usual = factSpec(path)?.typical(file.cushion.material)
  return known.get(path)?.si ?? (usual ? usualValue(usual, file.units) : undefined)
}

/** What lies too deep is taken off first, so that the grader shapes on its last day. */
function takesOff(file: FacilityFile, known: Known): boolean {
  const [found, target, tolerance] = (
    ['cushion.depth.found', 'cushion.depth.target', 'cushion.depth.tolerance'] as const
  ).map((path) => siOf(path, file, known))
  if (found === undefined || target === undefined || tolerance === undefined) return false
  return found - target > tolerance
}

/** Nothing is moved on this many days before the first race. */
const daysOfRest = 2

/**
 * What the booked days of the grader come to: how many they are, how long before the first race it
 * shapes, and how many of them a plan of the last days can use. The day on which it shapes is the
 * one from which all plans count, whatever is usual.
 * @param index Which machine of the file grades.
 */
export function graderDays(
  file: FacilityFile,
  index: number,
  tree: SourceTree,
  known: Known,
): void {
  const days = [...new Set(file.equipment?.[index]?.days ?? [])].sort()
  if (days.length === 0) return
  const at: Place = tree.placeOf(['equipment', index, 'days'])
  const set = (path: FactPath, si: number): void => {
    known.set(path, { si, provenance: { kind: 'stated', at } })
  }
  set('grader.days', days.length)
  const first = (file['race-days'] ?? []).map((d) => d.date).sort()[0]
  if (first === undefined) return
  const before = days.map((d) => dayNumber(first) - dayNumber(d)).filter((n) => n > 0)
  const shapes = takesOff(file, known) ? before.at(-1) : before[0]
  if (shapes === undefined) return
  set('grader.before', shapes * secondsPerDay)
  set('practice.grade-before', shapes * secondsPerDay)
  const span = (siOf('practice.ten-days.before', file, known) ?? 0) / secondsPerDay
  const within = before.filter((n) => n <= span && n > daysOfRest).length
  if (within > 0) set('grader.within', within)
}
