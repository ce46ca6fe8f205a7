import type { Problem } from '../../model/problem.ts'
import type { Calculation } from '../calculation.ts'
import {
  calculationGroups,
  calculationsOf,
  type DeclaredWorksheets,
  namesIn,
  type WordFile,
  type WordGroup,
} from './declared-worksheets.ts'

type Uses = DeclaredWorksheets['uses']

const fileWith = (files: readonly WordFile[], group: WordGroup, id: string): WordFile | undefined =>
  files.find((f) => f.value[group]?.[id] !== undefined)

/** Where a worksheet belongs: beside its calculation, else beside its neighbors in the table. */
function homeOfUse(id: string, files: readonly WordFile[], uses: Uses): WordFile | undefined {
  const ids = Object.keys(uses)
  const away = (other: string): number => Math.abs(ids.indexOf(other) - ids.indexOf(id))
  const beside = (uses[id] ?? []).flatMap((c) => fileWith(files, 'calculations', c.id) ?? [])
  const neighbors = [...ids]
    .sort((a, b) => away(a) - away(b))
    .flatMap((other) => fileWith(files, 'worksheets', other) ?? [])
  return beside[0] ?? neighbors[0]
}

/** Where a calculation belongs: beside the worksheet that shows it. */
function homeOfCalculation(
  { id }: Calculation,
  files: readonly WordFile[],
  uses: Uses,
): WordFile | undefined {
  const shownBy = Object.keys(uses).filter((use) => uses[use]?.some((c) => c.id === id))
  return (
    shownBy.flatMap((use) => fileWith(files, 'worksheets', use) ?? [])[0] ??
    shownBy.flatMap((use) => homeOfUse(use, files, uses) ?? [])[0]
  )
}

const wordsAskedFor = (calculation: Calculation): string =>
  [
    'title',
    'about',
    ...calculationGroups.flatMap((group) => {
      const names = namesIn(calculation, group)
      return names.length > 0 ? [`${group} (${names.join(', ')})`] : []
    }),
  ].join(', ')

type Lack = {
  readonly home: WordFile
  readonly group: WordGroup | 'no-number'
  readonly what: string
  readonly hint: string
}

/** At the head of the group that lacks it, or of the file where that has no such group. */
const toProblem = ({ home: { tree, value }, group, what, hint }: Lack): Problem =>
  tree.problem(
    value[group] ? tree.keyPlaceOf([group]) : tree.placeOf([]),
    'schema/missing',
    `there are no words for ${what}`,
    { hint },
  )

/**
 * Words that are asked for and stand nowhere, each reported in the file where they belong.
 * @param files The files of content/worksheets, at least one.
 */
export function lackingWords(
  files: readonly [WordFile, ...WordFile[]],
  declared: DeclaredWorksheets,
): Problem[] {
  const { uses, reasons } = declared
  const [any] = files
  const home = (group: WordGroup | 'no-number'): WordFile =>
    files.find((f) => f.value[group] !== undefined) ?? any
  const without = (group: WordGroup, ids: Iterable<string>): readonly string[] =>
    [...ids].filter((id) => !fileWith(files, group, id))
  const calculations = calculationsOf(declared)
  const lacks: readonly Lack[] = [
    ...without('worksheets', Object.keys(uses)).map((id) => ({
      home: homeOfUse(id, files, uses) ?? home('worksheets'),
      group: 'worksheets' as const,
      what: `the worksheet "${id}"`,
      hint: `add "${id}" under "worksheets", with a number that no other has or had`,
    })),
    ...[...calculations.values()]
      .filter((c) => !fileWith(files, 'calculations', c.id))
      .map((c) => ({
        home: homeOfCalculation(c, files, uses) ?? home('calculations'),
        group: 'calculations' as const,
        what: `the calculation "${c.id}"`,
        hint: `add "${c.id}" under "calculations": ${wordsAskedFor(c)}`,
      })),
    ...without('reasons', reasons).map((id) => ({
      home: home('reasons'),
      group: 'reasons' as const,
      what: `the reason "${id}"`,
      hint: `add "${id}" under "reasons"`,
    })),
    ...(files.some((f) => f.value['no-number'])
      ? []
      : [
          {
            home: home('reasons'),
            group: 'no-number' as const,
            what: 'a number that cannot be given',
            hint: 'add "no-number": unknown, outside, any',
          },
        ]),
  ]
  return lacks.map(toProblem)
}
