import { closest } from '../model/closest.ts'
import { isZone } from '../model/day.ts'
import { factPaths, factSpec } from '../model/fact-spec.ts'
import { distanceBetween } from '../model/geodesy.ts'
import { radiusFrom, straightFrom } from '../model/oval-shape.ts'
import type { Problem, Result } from '../model/problem.ts'
import type { Quantity } from '../model/quantity/parse-quantity.ts'
import { foot } from '../model/quantity/units.ts'
import { usualValue } from '../model/usual-value.ts'
import type { SourceTree } from '../read/read-yaml.ts'
import { checkMaterialTests, type MaterialTests } from './check-material-tests.ts'
import { checkSchema } from './check-schema.ts'
import { type Imported, nothingImported } from './imports/imports.ts'
import { type FacilityFile, facility } from './schemas/facility.ts'
import { readMeasured } from './schemas/quantity.ts'

/** A facility that has passed every check, with the tree that knows where each entry stands. */
export type Facility = {
  readonly file: FacilityFile
  readonly tree: SourceTree
  /** What stands in the files that it names; nothing before they have been read. */
  readonly imported: Imported
  readonly tests: MaterialTests
}

type OvalParts = { lap?: number; straight?: number; radius?: number; offset: number }

function ovalParts(file: FacilityFile): OvalParts {
  const oval = file.oval as Readonly<Record<string, unknown>>
  const si = (key: string): number | undefined => (oval[key] as Quantity | undefined)?.si
  const [lap, straight, radius] = [si('lap'), si('straight'), si('radius')]
  return {
    ...(lap === undefined ? {} : { lap }),
    ...(straight === undefined ? {} : { straight }),
    ...(radius === undefined ? {} : { radius }),
    offset:
      si('measuring-offset') ??
      usualValue(factSpec('oval.measuring-offset')?.typical(file.cushion.material), file.units),
  }
}

const smallestRadius = 15

/** An oval needs two of lap, straight and radius, and they must close. */
function checkOval({ file, tree }: Facility): Problem[] {
  const { lap, straight, radius, offset } = ovalParts(file)
  const known = [lap, straight, radius].filter((x) => x !== undefined).length
  const impossible = (key: string, message: string, hint: string): Problem[] => [
    tree.problem(tree.placeOf(['oval', key]), 'oval/impossible', message, { hint }),
  ]
  if (known < 2)
    return [
      tree.problem(
        tree.keyPlaceOf(['oval']),
        'oval/too-little',
        'the shape of the oval is not known',
        { hint: 'give two of: lap, straight, radius' },
      ),
    ]
  if (lap !== undefined && straight !== undefined) {
    const found = radiusFrom(lap, straight, offset)
    if (found < smallestRadius)
      return impossible(
        'straight',
        'two straights of this length leave no room for the turns in this lap',
        'a lap is two straights and two turns: lap = 2 × straight + 2π × (radius + measuring offset)',
      )
    if (radius !== undefined && Math.abs(found - radius) > 0.005 * radius) {
      return impossible(
        'radius',
        `lap and straight ask for a turn radius of ${found.toFixed(2)} m (${(found / foot).toFixed(1)} ft) at the rail`,
        'leave out the least sure of the three, or measure again',
      )
    }
  }
  if (
    lap !== undefined &&
    radius !== undefined &&
    straight === undefined &&
    straightFrom(lap, radius, offset) < smallestRadius
  ) {
    return impossible(
      'radius',
      'turns of this radius leave no room for straights in this lap',
      'a lap is two straights and two turns: lap = 2 × straight + 2π × (radius + measuring offset)',
    )
  }
  return []
}

function duplicates(
  tree: SourceTree,
  path: string,
  ids: readonly string[],
  what: string,
): Problem[] {
  return ids.flatMap((id, i) =>
    ids.indexOf(id) < i
      ? [
          tree.problem(
            tree.placeOf([path, i]),
            'ref/duplicate-id',
            `${what} "${id}" stands here twice`,
            { hint: `the first is entry ${ids.indexOf(id) + 1} of the list` },
          ),
        ]
      : [],
  )
}

function checkMeasurements({ file, tree }: Facility): Problem[] {
  return (file.measurements ?? []).flatMap((m, i) => {
    if (!factSpec(m.of)) {
      const near = closest(m.of, factPaths)
      return [
        tree.problem(
          tree.placeOf(['measurements', i, 'of']),
          'ref/missing',
          `there is nothing called "${m.of}" to measure`,
          {
            hint: near
              ? `did you mean "${near}"?`
              : 'write the path of an entry of this file, such as cushion.depth.found',
          },
        ),
      ]
    }
    const read = readMeasured(m.of, m.value)
    return 'params' in read
      ? [
          tree.problem(
            tree.placeOf(['measurements', i, 'value']),
            read.params.code,
            read.message,
            read.params.hint === undefined ? {} : { hint: read.params.hint },
          ),
        ]
      : []
  })
}

/**
 * Farther than this from the place in the same file, m, a gate is another fairground's, or a digit
 * is wrong.
 */
const farthestGate = 20_000

function checkEmergency({ file, tree }: Facility): Problem[] {
  const { coordinates, 'stops-racing': stops = [] } = file.emergency ?? {}
  const roles = new Set((file.contacts ?? []).map((c) => c.role))
  const unnamed = stops.flatMap((role, i) =>
    roles.has(role)
      ? []
      : [
          tree.problem(
            tree.placeOf(['emergency', 'stops-racing', i]),
            'ref/missing',
            `nobody among the contacts is "${role}"`,
            {
              hint: 'add a contact with this role, so that the page has a name and a telephone number',
            },
          ),
        ],
  )
  const { latitude, longitude } = file.place
  const far =
    coordinates && latitude !== undefined && longitude !== undefined
      ? distanceBetween(coordinates, { latitude, longitude })
      : 0
  const off =
    far > farthestGate
      ? [
          tree.problem(
            tree.placeOf(['emergency', 'coordinates', 'latitude']),
            'quantity/range',
            `the gate lies ${Math.round(far / 1000)} km from the place in this file`,
            { hint: 'read both numbers again at the gate; west and south are negative' },
          ),
        ]
      : []
  return [...unnamed, ...off]
}

/** A stockpile's gate is one that the same file names, at the outside. */
function checkGates({ file, tree }: Facility): Problem[] {
  const marks = file.oval.marks ?? []
  const gates = marks.filter((m) => m.kind === 'gate' && m.side !== 'rail').map((m) => m.name)
  return marks.flatMap(({ gate }, i) => {
    if (gate === undefined || gates.includes(gate)) return []
    const near = closest(gate, gates)
    return [
      tree.problem(
        tree.placeOf(['oval', 'marks', i, 'gate']),
        'ref/missing',
        `no gate at the outside is called "${gate}"`,
        { hint: near ? `did you mean "${near}"?` : `known: ${gates.join(', ')}` },
      ),
    ]
  })
}

function checkZone({ file, tree }: Facility): Problem[] {
  const zone = file.place['time-zone']
  if (zone === undefined || isZone(zone)) return []
  return [
    tree.problem(
      tree.placeOf(['place', 'time-zone']),
      'schema/choice',
      `there is no time zone "${zone}"`,
      { hint: 'expected a zone of the IANA list, such as America/New_York' },
    ),
  ]
}

/**
 * Checks a facility file: schema first, then what no schema can see. All faults are reported at
 * once.
 */
export function checkFacility(tree: SourceTree): Result<Facility> {
  const parsed = checkSchema(tree, facility)
  if (!parsed.value) return { value: undefined, problems: parsed.problems }
  const tests = checkMaterialTests(parsed.value, tree)
  const value: Facility = {
    file: parsed.value,
    tree,
    imported: nothingImported,
    tests: tests.value ?? { sieves: [], densities: [] },
  }
  const problems = [
    ...checkOval(value),
    ...checkGates(value),
    ...checkZone(value),
    ...checkEmergency(value),
    ...duplicates(
      tree,
      'equipment',
      (value.file.equipment ?? []).map((m) => m.id),
      'machine',
    ),
    ...duplicates(
      tree,
      'race-days',
      (value.file['race-days'] ?? []).map((d) => d.date),
      'race day',
    ),
    ...duplicates(
      tree,
      'climate',
      (value.file.climate ?? []).map((m) => String(m.month)),
      'month',
    ),
    ...tests.problems,
    ...checkMeasurements(value),
  ]
  return { value, problems }
}
