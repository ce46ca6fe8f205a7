import { didYouMean } from '../../model/closest.ts'
import type { Problem } from '../../model/problem.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { Sourced } from '../../validate/check-library.ts'
import type { WorksheetFile } from '../../validate/schemas/worksheets.ts'
import type { Calculation } from '../calculation.ts'
import { reasons } from './reasons.ts'
import { useTable } from './use-table.ts'

type File = Sourced<WorksheetFile>

/** What calculations and uses there are, which words must name. */
export type DeclaredWorksheets = {
  readonly uses: Readonly<Record<string, readonly Calculation[]>>
  readonly reasons: readonly string[]
}

const declared: DeclaredWorksheets = { uses: useTable, reasons }

/** An entry of a file, with the path that leads to it. */
type Entry = { readonly file: File; readonly path: Path; readonly id: string }

const entriesIn = (
  files: readonly File[],
  group: 'worksheets' | 'calculations' | 'reasons',
): readonly Entry[] =>
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

/**
 * Words that are asked for and stand nowhere; reported at the head of a group, that of the subject
 * where it can be told.
 */
function lacking(
  entries: readonly Entry[],
  known: readonly string[],
  what: string,
  files: readonly File[],
  group: 'worksheets' | 'calculations' | 'reasons',
): Problem[] {
  const home = files.find((f) => f.value[group] !== undefined)
  const has = new Set(entries.map((e) => e.id))
  return known.flatMap((id) =>
    has.has(id) || !home
      ? []
      : [
          home.tree.problem(
            home.tree.keyPlaceOf([group]),
            'schema/missing',
            `there are no words for the ${what} "${id}"`,
            { hint: `add "${id}" under "${group}" in the file of its subject` },
          ),
        ],
  )
}

const groups = ['inputs', 'outputs', 'refusals', 'terms'] as const

const namesIn = (calculation: Calculation, group: (typeof groups)[number]): readonly string[] =>
  group === 'inputs' || group === 'outputs'
    ? Object.keys(calculation[group])
    : (calculation[group] ?? [])

/** A calculation's own words against what it declares. */
function inCalculation({ file, path, id }: Entry, calculation: Calculation): Problem[] {
  const words = file.value.calculations?.[id]
  return groups.flatMap((group) => {
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

/**
 * Worksheets are declarations in code and words in content: each must have the other.
 * @param files The files of content/worksheets.
 */
export function worksheetWordProblems(
  files: readonly File[],
  { uses, reasons: whys }: DeclaredWorksheets = declared,
): Problem[] {
  const calculations = new Map(
    Object.values(uses)
      .flat()
      .map((c) => [c.id, c]),
  )
  const [sheets, called, fixed] = [
    entriesIn(files, 'worksheets'),
    entriesIn(files, 'calculations'),
    entriesIn(files, 'reasons'),
  ]
  const [useIds, calculationIds] = [Object.keys(uses), [...calculations.keys()]]
  return [
    ...surplus(sheets, useIds, 'worksheet'),
    ...surplus(called, calculationIds, 'calculation'),
    ...surplus(fixed, whys, 'reason'),
    ...lacking(sheets, useIds, 'worksheet', files, 'worksheets'),
    ...lacking(called, calculationIds, 'calculation', files, 'calculations'),
    ...lacking(fixed, whys, 'reason', files, 'reasons'),
    ...numberedTwice(sheets),
    ...called.flatMap((entry) => {
      const calculation = calculations.get(entry.id)
      return calculation ? inCalculation(entry, calculation) : []
    }),
  ]
}
