import type { Capability } from '../../model/capability.ts'
import { dayNumber, monthOf, secondsPerDay, zoneOffset } from '../../model/day.ts'
import { factSpec, gearFields } from '../../model/fact-spec.ts'
import { closedLine, localPlane } from '../../model/geodesy.ts'
import type { Place } from '../../model/problem.ts'
import type { Quantity } from '../../model/quantity/read-quantity.ts'
import { usualValue } from '../../model/usual-value.ts'
import type { Path, SourceTree } from '../../read/read-yaml.ts'
import type { Facility } from '../../validate/check-facility.ts'
import { median } from '../../validate/imports/median.ts'
import type { RailLine } from '../../validate/imports/rail-line.ts'
import { readMeasured } from '../../validate/read-measured.ts'
import type { FacilityFile } from '../../validate/schemas/facility.ts'
import { isRefusal } from '../calculation.ts'
import { coarserThan } from '../materials/gradation.ts'
import { curveOf } from '../materials/sieve-analysis.ts'
import { type FittedOval, fitOval } from '../oval/rail-line/fit-oval.ts'
import { graderDays } from './grader-days.ts'
import { type KnownValue, type KnownValues, saidAt } from './known.ts'
import { surveyedDepths } from './surveyed-depths.ts'
import { waterTrucks } from './truck-kinds.ts'

const isQuantity = (x: unknown): x is Quantity =>
  typeof x === 'object' && x !== null && 'si' in x && 'dims' in x

const stated = (si: number, at: Place): KnownValue => ({ si, provenance: { kind: 'stated', at } })

/** Every quantity of the file that stands outside a list, by its path. */
function walk(
  data: unknown,
  path: readonly string[],
  tree: SourceTree,
  into: Map<string, KnownValue>,
): void {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return
  for (const [key, value] of Object.entries(data)) {
    const here = [...path, key]
    if (isQuantity(value)) into.set(here.join('.'), saidAt(value, tree.placeOf(here)))
    else walk(value, here, tree, into)
  }
}

/**
 * The machine that does a kind of work here: the first in the file that can, so the file's order is
 * the order of choice.
 */
export function machineFor(
  file: FacilityFile,
  capability: Capability,
): { readonly index: number; readonly name: string } | undefined {
  const index = (file.equipment ?? []).findIndex((m) => m.can.includes(capability))
  const found = file.equipment?.[index]
  return found && { index, name: found.name }
}

function gear(
  file: FacilityFile,
  tree: SourceTree,
  capabilities: Iterable<Capability>,
  into: Map<string, KnownValue>,
): void {
  for (const capability of capabilities) {
    const chosen = machineFor(file, capability)
    const machine =
      chosen && (file.equipment?.[chosen.index] as Readonly<Record<string, unknown>> | undefined)
    if (!chosen || !machine) continue
    for (const field of gearFields) {
      const value = machine[field]
      if (isQuantity(value))
        into.set(
          `gear.${capability}.${field}`,
          saidAt(value, tree.placeOf(['equipment', chosen.index, field])),
        )
    }
  }
}

/** What the race dates say: how many, the fullest card with its breaks, the shortest interval, the time of year. */
function raceDays(file: FacilityFile, tree: SourceTree, into: Map<string, KnownValue>): void {
  const days = file['race-days'] ?? []
  const dated = days.toSorted((a, b) => a.date.localeCompare(b.date))
  const [first] = dated
  if (!first) return
  const at = (path: Path): Place => tree.placeOf(path)
  into.set('race-days.count', stated(days.length, at(['race-days'])))
  into.set(
    'fair.day',
    stated(dayNumber(first.date), at(['race-days', days.indexOf(first), 'date'])),
  )
  const zone =
    file.place['time-zone'] === undefined
      ? undefined
      : zoneOffset(first.date, file.place['time-zone'])
  if (zone !== undefined) into.set('fair.zone', stated(zone, at(['place', 'time-zone'])))
  // Of days that are as full the first by date, whatever their order in the file.
  const fullest = dated.reduce((a, b) => (b.races > a.races ? b : a))
  into.set(
    'race-days.races',
    stated(fullest.races, at(['race-days', days.indexOf(fullest), 'races'])),
  )
  into.set(
    'race-days.first-post',
    stated(fullest['first-post'], at(['race-days', days.indexOf(fullest), 'first-post'])),
  )
  const intervals = days.flatMap((d, i) =>
    isQuantity(d.interval) ? [{ said: d.interval, i }] : [],
  )
  const shortest = intervals.sort((a, b) => a.said.si - b.said.si)[0]
  if (shortest)
    into.set('race-days.interval', saidAt(shortest.said, at(['race-days', shortest.i, 'interval'])))
  const index = days.indexOf(fullest)
  for (const key of ['break-every', 'break'] as const) {
    const value = fullest[key]
    if (isQuantity(value))
      into.set(`race-days.${key}`, saidAt(value, at(['race-days', index, key])))
  }
}

/** Climate of the month in which the fair begins. */
function climate(file: FacilityFile, tree: SourceTree, into: Map<string, KnownValue>): void {
  const first = [...(file['race-days'] ?? [])].map((d) => d.date).sort()[0]
  const index = (file.climate ?? []).findIndex(
    (m) => first !== undefined && m.month === monthOf(first),
  )
  const month = file.climate?.[index] as Readonly<Record<string, unknown>> | undefined
  for (const [key, value] of Object.entries(month ?? {})) {
    if (isQuantity(value))
      into.set(`climate.${key}`, saidAt(value, tree.placeOf(['climate', index, key])))
  }
}

function coordinates(file: FacilityFile, tree: SourceTree, into: Map<string, KnownValue>): void {
  for (const key of ['latitude', 'longitude'] as const) {
    const degrees = file.place[key]
    if (degrees !== undefined)
      into.set(`place.${key}`, stated((degrees * Math.PI) / 180, tree.placeOf(['place', key])))
  }
}

type Measured = {
  readonly of: string
  readonly si: number
  readonly date: string
  readonly by: string
  readonly at: Place
}

function listedMeasurements(file: FacilityFile, tree: SourceTree): Measured[] {
  return (file.measurements ?? []).flatMap(({ of, value, date, by }, i) => {
    const read = factSpec(of) ? readMeasured(of, value) : undefined
    return read && 'si' in read
      ? [{ of, si: read.si, date, by, at: tree.placeOf(['measurements', i, 'value']) }]
      : []
  })
}

/** Grit read from each sieve analysis, at the grit size of the file or the usual one. */
function sievedGrit({ file, tests, tree }: Facility): Measured[] {
  const given = (file.cushion.grit as Readonly<Record<string, Quantity>> | undefined)?.['size']?.si
  const size =
    given ?? usualValue(factSpec('cushion.grit.size')?.typical(file.cushion.material), file.units)
  return tests.sieves.flatMap((test) => {
    const share = coarserThan(size, curveOf(test))
    const index = (file.cushion.sieve ?? []).findIndex((s) => s.date === test.date)
    return isRefusal(share)
      ? []
      : [
          {
            of: 'cushion.grit.found',
            si: share,
            date: test.date,
            by: test.by,
            at: tree.placeOf(['cushion', 'sieve', index, 'passing']),
          },
        ]
  })
}

/** The middle sample of each day. */
const sampledMoisture = ({ imported }: Facility): Measured[] =>
  imported.moisture.flatMap(({ days, by, at }) =>
    days.map(({ date, values }) => ({
      of: 'cushion.moisture.found',
      si: median(values),
      date,
      by,
      at,
    })),
  )

/**
 * A measurement outranks what the file states, and the latest outranks the earlier ones; a survey,
 * a table of samples or a sieve analysis outranks a single value of the same day.
 */
function measurements(facility: Facility, into: Map<string, KnownValue>): void {
  const list = [
    ...listedMeasurements(facility.file, facility.tree),
    ...sievedGrit(facility),
    ...sampledMoisture(facility),
  ].sort((a, b) => a.date.localeCompare(b.date))
  for (const { of, si, date, by, at } of list)
    into.set(of, { si, provenance: { kind: 'measured', at, date, by } })
  depthFound(facility, into)
}

/** The depth found is that of the latest survey, unless it was measured later in another way. */
function depthFound({ file, imported }: Facility, into: Map<string, KnownValue>): void {
  const dateOf = (value: KnownValue | undefined): string =>
    value?.provenance.kind === 'measured' ? value.provenance.date : ''
  for (const depth of surveyedDepths(imported.surveys, into, file.units))
    if (dateOf(depth) >= dateOf(into.get('cushion.depth.found')))
      into.set('cushion.depth.found', depth)
}

/** A depth survey this close before the first race need not be made again, days. */
const stillGood = 21

/** How long before the first race the depth was surveyed last, where that still holds. */
function surveyAge({ file, imported }: Facility, into: Map<string, KnownValue>): void {
  const race = (file['race-days'] ?? []).map((d) => d.date).sort()[0]
  const last = imported.surveys
    .filter((s) => s.of === 'cushion-depth')
    .flatMap(({ days, by, at }) => days.map(({ date }) => ({ date, by, at })))
    .sort((a, b) => a.date.localeCompare(b.date))
    .at(-1)
  if (!(race && last)) return
  const before = dayNumber(race) - dayNumber(last.date)
  if (before < 0 || before > stillGood) return
  const { date, by, at } = last
  into.set('survey.before', {
    si: before * secondsPerDay,
    provenance: { kind: 'measured', at, date, by },
  })
}

const fitted = new WeakMap<RailLine['points'], FittedOval>()

/** The oval of a walked line, laid through its points once. */
function ovalThrough(points: RailLine['points']): FittedOval {
  const oval = fitted.get(points) ?? fitOval(localPlane(points))
  fitted.set(points, oval)
  return oval
}

/** What the walked line of the rail measures. */
function walkedLine({ points, date, by, at }: RailLine, into: Map<string, KnownValue>): void {
  const { straight, radius, worst } = ovalThrough(points)
  const values = { length: closedLine(points).length, straight, radius, worst }
  for (const [key, si] of Object.entries(values))
    into.set(`rail-line.${key}`, { si, provenance: { kind: 'measured', at, date, by } })
}

/** Everything that a facility file says, by fact path, each with the place where it says so. */
export function collectKnown(facility: Facility, capabilities: Iterable<Capability>): KnownValues {
  const { file, tree, imported } = facility
  const line = imported['rail-line'][0]
  const known = new Map<string, KnownValue>()
  walk(file, [], tree, known)
  coordinates(file, tree, known)
  gear(file, tree, capabilities, known)
  waterTrucks(file, tree, known)
  raceDays(file, tree, known)
  climate(file, tree, known)
  if (line) walkedLine(line, known)
  measurements(facility, known)
  surveyAge(facility, known)
  // On the first race day the store is full.
  const store = known.get('water.storage')
  if (store) known.set('store.morning', store)
  const grader = machineFor(file, 'grade')
  if (grader) graderDays(file, grader.index, tree, known)
  return known
}
