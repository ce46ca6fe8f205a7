import table from '../../shared/entries.json' with { type: 'json' }
import { factPaths, gearFields } from './fact-spec.ts'

type Names = {
  /** Names of all entries of a facility file. */
  readonly all: ReadonlySet<string>
  /** Pairs of names that stand one inside the other, as `crew.people`. */
  readonly pairs: ReadonlySet<string>
}

function collect(): Names {
  const paths = [
    ...Object.keys(table.entries),
    ...factPaths.filter((path) => !path.startsWith('gear.')),
    ...gearFields.map((field) => `equipment.${field}`),
  ].map((path) => path.split('.'))
  return {
    all: new Set(paths.flat()),
    pairs: new Set(paths.flatMap((path) => path.slice(1).map((name, i) => `${path[i]}.${name}`))),
  }
}

let known: Names | undefined
const names = (): Names => {
  known ??= collect()
  return known
}

/** Whether a facility file may have an entry of this name somewhere. */
export const isEntryName = (name: string): boolean => names().all.has(name)

/** Whether a group of a facility file may have an entry of this name. */
export const isEntryIn = (group: string, name: string): boolean =>
  names().pairs.has(`${group}.${name}`)
