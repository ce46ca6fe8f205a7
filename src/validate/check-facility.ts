import type { DensityTest, SieveTest } from '../model/material-tests.ts'
import type { Result } from '../model/problem.ts'
import type { SourceTree } from '../read/read-yaml.ts'
import { checkSchema } from './check-schema.ts'
import { checkDuplicates } from './facility/check-duplicates.ts'
import { checkEmergency } from './facility/check-emergency.ts'
import { checkGates } from './facility/check-gates.ts'
import { checkHeads } from './facility/check-heads.ts'
import { checkMachines } from './facility/check-machines.ts'
import { checkMeasurements } from './facility/check-measurements.ts'
import { checkOval } from './facility/check-oval.ts'
import { checkSaid } from './facility/check-said.ts'
import { checkZone } from './facility/check-zone.ts'
import type { ParsedFacility } from './facility/parsed-facility.ts'
import { checkClimate } from './facility/plausible/check-climate.ts'
import { checkClocks } from './facility/plausible/check-clocks.ts'
import { checkCopied } from './facility/plausible/check-copied.ts'
import { checkMaterial } from './facility/plausible/check-material.ts'
import { checkMeasured } from './facility/plausible/check-measured.ts'
import { checkMoney } from './facility/plausible/check-money.ts'
import { checkPlace } from './facility/plausible/check-place.ts'
import { checkRaces } from './facility/plausible/check-races.ts'
import { checkShape } from './facility/plausible/check-shape.ts'
import { checkUnits } from './facility/plausible/check-units.ts'
import { checkUsual } from './facility/plausible/check-usual.ts'
import { checkWork } from './facility/plausible/check-work.ts'
import { type Imported, nothingImported } from './imports/imports.ts'
import { readDensityTests } from './materials/density-tests.ts'
import { readSieveTests } from './materials/sieve-tests.ts'
import { facility } from './schemas/facility.ts'

/** A facility that has passed every check, with the tree that knows where each entry stands. */
export type Facility = ParsedFacility & {
  /** What stands in the files that it names; nothing before they have been read. */
  readonly imported: Imported
  /** Sieve analyses of the cushion, oldest first, and density tests of the base. */
  readonly tests: {
    readonly sieves: readonly SieveTest[]
    readonly densities: readonly DensityTest[]
  }
}

/** What no schema can see, each a file in `facility/`. */
const checks = [
  checkOval,
  checkGates,
  checkZone,
  checkEmergency,
  checkSaid,
  checkMachines,
  checkDuplicates,
  checkMeasurements,
  checkClocks,
  checkClimate,
  checkMaterial,
  checkUsual,
  checkPlace,
  checkUnits,
  checkShape,
  checkMeasured,
  checkWork,
  checkRaces,
  checkMoney,
  checkCopied,
] as const

/**
 * Checks a facility file: schema first, then what no schema can see. All faults are reported at
 * once.
 */
export function checkFacility(tree: SourceTree): Result<Facility> {
  const { value: file, problems } = checkSchema(tree, facility)
  const heads = checkHeads(tree, new Set(problems.map((p) => p.place.line)))
  if (!file) return { value: undefined, problems: [...problems, ...heads] }
  const sieves = readSieveTests(file.cushion.sieve ?? [], tree)
  const densities = readDensityTests(file.base?.density ?? [])
  return {
    value: {
      file,
      tree,
      imported: nothingImported,
      tests: { sieves: sieves.value, densities },
    },
    problems: [...heads, ...checks.flatMap((check) => check({ file, tree })), ...sieves.problems],
  }
}
