import { composeManual } from '../compose/compose-manual.ts'
import type { SourceItem } from '../compose/sources.ts'
import type { Computed } from '../compute/compute-facility.ts'
import { figureIds } from '../compute/uses/ids.ts'
import { worksheetWords } from '../compute/uses/worksheet-words.ts'
import { factPaths } from '../model/fact-spec.ts'
import type { Manual } from '../model/manual.ts'
import type { Problem } from '../model/problem.ts'
import { knownYaml, type Path, readYaml, type SourceTree } from '../read/read-yaml.ts'
import type { SourceFile } from '../read/source-file.ts'
import type { Facility } from '../validate/check-facility.ts'
import type { Library } from '../validate/check-library.ts'
import { factWords } from '../validate/fact-words.ts'
import { type Against, type Checked, checkAnswers } from './check-answers.ts'
import { type Cures, cure, curedTree, isOut, isWithin, noCures } from './cure.ts'
import { type Files, tablesOf } from './files.ts'
import { keyOf } from './leave-out.ts'
import type { Unnamed } from './stand-ins.ts'

/** What everybody's answers are worked out with. */
export type WorkGiven = {
  readonly library: Library
  readonly sources: readonly SourceItem[]
  /** What the clock says, `YYYY-MM-DD`. */
  readonly today: string
  readonly unnamed: Unnamed
}

/** What the answers make. */
type Worked = {
  readonly problems: readonly Problem[]
  readonly facility: Facility | undefined
  readonly computed: Computed | undefined
  readonly manual: Manual | undefined
  /** What all of it is worded with. */
  readonly library: Library
  /** Paths of answers that were left out because they do not fit; an empty one is the whole file. */
  readonly leftOut: readonly string[]
  /** Paths where something stands in, since nobody has said it and nothing works without it. */
  readonly standIns: readonly string[]
}

const pathsOf = (out: ReadonlySet<string>): readonly Path[] =>
  [...out].map((key) => JSON.parse(key) as Path)

/** More rounds than any faults take. */
const rounds = 100

type Settled = Checked & { readonly cures: Cures; readonly all: readonly Problem[] }

const isError = (p: Problem): boolean => p.severity === 'error'

/** Whether a problem of a cured file is told: not what its cures have brought about. */
function isTold({ code, path = [] }: Problem, cures: Cures): boolean {
  const out = pathsOf(cures.out)
  const byCure =
    (out.length > 0 && code === 'ref/missing') ||
    (code === 'oval/too-little' && out.some((p) => isWithin(p, ['oval']))) ||
    // A list that has lost its only entry.
    (code === 'schema/format' && out.some((p) => isWithin(p, path)))
  return !byCure && !isOut(path, cures) && !cures.standIns.some((s) => isWithin(path, s.path))
}

const sameProblem = (a: Problem, b: Problem): boolean =>
  a.code === b.code && a.message === b.message && keyOf(a.path ?? []) === keyOf(b.path ?? [])

/** Cures a file until nothing is wrong with it, and keeps what was said on the way. */
function settle(tree: SourceTree, against: Against, unnamed: Unnamed): Settled {
  let cures = noCures
  let all: readonly Problem[] = []
  for (let round = 0; ; round++) {
    const checked = checkAnswers(curedTree(tree, cures), against)
    const now = cures
    const told = checked.problems.filter((p) => isTold(p, now))
    all = [...all, ...told.filter((p) => !all.some((q) => sameProblem(p, q)))]
    const errors = checked.problems.filter(isError)
    if (errors.length === 0 || round === rounds) return { ...checked, cures, all }
    const file = checked.facility?.file
    const cured = errors.reduce((c, p) => cure(p, { tree, cures: c, file, unnamed }), cures)
    const isStuck = keyOf([...cured.out]) === keyOf([...cures.out]) && sameLength(cured, cures)
    cures = isStuck ? { out: new Set([keyOf([])]), standIns: [] } : cured
  }
}

const sameLength = (a: Cures, b: Cures): boolean => a.standIns.length === b.standIns.length

/** The paths that do not lie within another one. */
function outermost(out: ReadonlySet<string>): readonly string[] {
  const paths = pathsOf(out)
  return paths
    .filter((path) => !paths.some((p) => p.length < path.length && isWithin(path, p)))
    .map((path) => path.join('.'))
}

/** The facility file; what is no YAML says nothing at all, and an empty one is one not yet begun. */
function treeOf(file: SourceFile): {
  readonly tree: SourceTree
  readonly problems: readonly Problem[]
  readonly isUnread: boolean
} {
  const { value, problems } = readYaml(file)
  if (value) return { tree: value, problems, isUnread: false }
  const isEmpty = problems.every((p) => p.code === 'file/empty')
  return { tree: knownYaml(file, {}), problems: isEmpty ? [] : problems, isUnread: !isEmpty }
}

const asText = (content: string | Uint8Array | undefined): string =>
  typeof content === 'string' ? content : ''

/**
 * Makes what works answers out while they are being given. What does not fit is left out, and what
 * nothing works without is put in, so that one fault never hides what all other answers mean.
 */
export function workWith(given: WorkGiven): (files: Files) => Worked {
  const { library, sources, today, unnamed } = given
  const words = {
    facts: factWords(library),
    units: library.words.units,
    worksheets: worksheetWords(library.worksheets.map((f) => f.value)),
  }
  const targets = {
    quantities: new Set<string>([...figureIds, ...factPaths]),
    procedures: new Map(library.procedures.map((p) => [p.value.id, p.value.title])),
  }
  const tables = tablesOf()
  return (files) => {
    const read = treeOf({ path: 'facility.yaml', text: asText(files.get('facility.yaml')) })
    const { tree } = read
    const against = { textOf: tables(files, tree), today, words, targets }
    const { facility, computed, date, cures, all } = settle(tree, against, unnamed)
    return {
      // Of a file that cannot be read, what it lacks is not known.
      problems: read.isUnread ? read.problems : [...read.problems, ...all],
      facility,
      computed,
      manual:
        facility && computed
          ? composeManual({ facility, computed, library, sources, date })
          : undefined,
      library,
      leftOut: read.isUnread ? [''] : outermost(cures.out),
      standIns: cures.standIns.map((s) => s.path.join('.')),
    }
  }
}
