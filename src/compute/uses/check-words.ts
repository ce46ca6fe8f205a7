import { didYouMean } from '../../model/closest.ts'
import type { Problem } from '../../model/problem.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { Calculation } from '../calculation.ts'
import {
  calculationGroups,
  calculationsOf,
  type DeclaredWorksheets,
  declaredWorksheets,
  namesIn,
  type WordFile,
  type WordGroup,
} from './declared-worksheets.ts'
import { lackingWords } from './lacking-words.ts'
import { unfilledPlaces } from './unfilled-places.ts'

/** An entry of a file, with the path that leads to it. */
type Entry = { readonly file: WordFile; readonly path: Path; readonly id: string }

const entriesIn = (files: readonly WordFile[], group: WordGroup): readonly Entry[] =>
  files.flatMap((file) =>
    Object.keys(file.value[group] ?? {}).map((id) => ({ file, path: [group, id], id })),
  )

const shownAt = ({ file, path }: Entry): string => {
  const { file: name, line } = file.tree.keyPlaceOf(path)
  return `${name}:${line}`
}

/** Entries that stand twice, or that nothing asks for. */
function surplus(entries: readonly Entry[], known: readonly string[], what: string): Problem[] {
  const seen = new Map<string, Entry>()
  return entries.flatMap((entry) => {
    const { file, path, id } = entry
    const first = seen.get(id)
    seen.set(id, first ?? entry)
    const at = file.tree.keyPlaceOf(path)
    if (first)
      return [
        file.tree.problem(at, 'ref/duplicate-id', `${what} "${id}" has words already`, {
          hint: `the first stand at ${shownAt(first)}`,
        }),
      ]
    if (known.includes(id)) return []
    return [
      file.tree.problem(at, 'ref/missing', `there is no ${what} "${id}"`, {
        hint: didYouMean(id, known) ?? `no ${what} asks for these words`,
      }),
    ]
  })
}

/** Of the words for numbers that cannot be given there is one group in all files. */
function saidTwice(files: readonly WordFile[]): Problem[] {
  const [first, ...others] = files.filter((f) => f.value['no-number'])
  return others.map(({ tree }) =>
    tree.problem(
      tree.keyPlaceOf(['no-number']),
      'ref/duplicate-id',
      '"no-number" has words already',
      { hint: `the first stand in ${first?.tree.file.path}` },
    ),
  )
}

/** A calculation's own words against what it declares. */
function inCalculation({ file, path, id }: Entry, calculation: Calculation): Problem[] {
  const words = file.value.calculations?.[id]
  return calculationGroups.flatMap((group) => {
    const [said, wanted] = [Object.keys(words?.[group] ?? {}), namesIn(calculation, group)]
    const missing = wanted.filter((name) => !said.includes(name))
    const extra = said.filter((name) => !wanted.includes(name))
    const at = file.tree.keyPlaceOf(said.length > 0 ? [...path, group] : path)
    return [
      ...missing.map((name) =>
        file.tree.problem(at, 'schema/missing', `"${id}" has no words for "${name}"`, {
          hint: `add "${name}" under "${group}"`,
        }),
      ),
      ...extra.map((name) =>
        file.tree.problem(
          file.tree.keyPlaceOf([...path, group, name]),
          'ref/missing',
          `"${id}" has nothing called "${name}"`,
          { hint: didYouMean(name, wanted) ?? `it has: ${wanted.join(', ') || 'none'}` },
        ),
      ),
    ]
  })
}

/** A number leads to one worksheet, in this manual and in every later one. */
function numberedTwice(entries: readonly Entry[]): Problem[] {
  const seen = new Map<number, Entry>()
  return entries.flatMap((entry) => {
    const { file, path, id } = entry
    const number = file.value.worksheets?.[id]?.number
    const first = number === undefined ? undefined : seen.get(number)
    if (number !== undefined && !first) seen.set(number, entry)
    return first && number !== undefined
      ? [
          file.tree.problem(
            file.tree.placeOf([...path, 'number']),
            'ref/duplicate-id',
            `worksheet ${number} is "${first.id}" already`,
            { hint: `it stands at ${shownAt(first)}; numbers are never given twice` },
          ),
        ]
      : []
  })
}

/** A library without any words of worksheets has no line to point at. */
const noFiles: Problem = {
  code: 'file/missing',
  severity: 'error',
  message: 'there are no words of worksheets',
  hint: 'they stand in the files of content/worksheets',
  place: { file: 'content/worksheets', line: 1, column: 1, length: 1 },
}

/**
 * Worksheets are declarations in code and words in content: each must have the other.
 * @param files The files of content/worksheets.
 */
export function worksheetWordProblems(
  files: readonly WordFile[],
  declared: DeclaredWorksheets = declaredWorksheets,
): Problem[] {
  const [first, ...others] = files
  if (!first) return [noFiles]
  const calculations = calculationsOf(declared)
  const sheets = entriesIn(files, 'worksheets')
  const called = entriesIn(files, 'calculations')
  return [
    ...surplus(sheets, Object.keys(declared.uses), 'worksheet'),
    ...surplus(called, [...calculations.keys()], 'calculation'),
    ...surplus(entriesIn(files, 'reasons'), declared.reasons, 'reason'),
    ...saidTwice(files),
    ...lackingWords([first, ...others], declared),
    ...numberedTwice(sheets),
    ...called.flatMap((entry) => {
      const calculation = calculations.get(entry.id)
      return calculation ? inCalculation(entry, calculation) : []
    }),
    ...files.flatMap((file) => unfilledPlaces(file, calculations)),
  ]
}
