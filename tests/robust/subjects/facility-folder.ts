import { mkdir, rm, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { assembleManual } from '../../../src/cli/load/assemble-manual.ts'
import { loadFacility } from '../../../src/cli/load/load-facility.ts'
import { readTrees } from '../../../src/cli/load/read-tree.ts'
import { hasErrors, type Problem } from '../../../src/model/problem.ts'
import type { Chance } from '../chance.ts'
import {
  type FacilityName,
  type Files,
  type Ground,
  type Shelf,
  shelfOf,
  today,
} from '../ground.ts'
import { faultsOfOutput, faultsOfValue, type Output } from '../judge/outputs.ts'
import { faultsOfProblems } from '../judge/problems.ts'
import { someOutputs } from '../make-outputs.ts'
import { type Form, mutate } from '../mutations/mutate.ts'
import type { Run, Subject } from './subject.ts'

let count = 0

/** Lays files into a folder of their own for as long as something looks at them. */
export async function inFolder<T>(
  { folder }: Ground,
  files: Files,
  look: (root: string) => Promise<T>,
): Promise<T> {
  const root = path.join(folder, String(++count))
  try {
    for (const [name, data] of files) {
      await mkdir(path.dirname(path.join(root, name)), { recursive: true })
      await writeFile(path.join(root, name), data)
    }
    return await look(root)
  } finally {
    await rm(root, { recursive: true, force: true })
  }
}

/** Problems that say more than is wrong, and a manual that was made though something is. */
const endingOf = (problems: readonly Problem[], isMade: boolean): readonly string[] => [
  ...(isMade && hasErrors(problems) ? ['made in spite of errors'] : []),
  ...(!isMade && !hasErrors(problems) ? ['not made, and nobody says why'] : []),
]

/**
 * Reads a facility folder, makes its manual and looks at some of what is made of it.
 * @param alsoIn What else is wrong with a text that was made.
 */
export async function lookAtFolder(
  root: string,
  files: Files,
  shelf: Shelf,
  ground: Ground,
  chance: Chance,
  alsoIn: (output: Output) => readonly string[] = () => [],
): Promise<Pick<Run, 'ending' | 'faults'>> {
  const [loaded, own] = await Promise.all([
    loadFacility({ root, shown: '' }, { today, wanted: undefined }),
    readTrees(root, 'procedures', ''),
  ])
  const { small, whole, sources, sourceIds, assets } = ground
  const hasOwn = (own.value ?? []).length > 0
  const checked = hasOwn
    ? shelfOf(
        { ...shelf.trees, procedures: [...shelf.trees.procedures, ...(own.value ?? [])] },
        sourceIds,
      )
    : { value: shelf.library, problems: shelf.problems }
  const { manual, problems } = assembleManual(
    loaded,
    { value: checked.value, problems: [...own.problems, ...checked.problems] },
    sources,
  )
  const textOf = (file: string): string | undefined => files.get(file)?.toString('utf8')
  const said = [...faultsOfProblems(problems, textOf), ...endingOf(problems, manual !== undefined)]
  if (!manual || !checked.value) return { ending: 'refused', faults: said }
  const words = shelf === small ? small.library.words : whole.library.words
  const { siteAddress } = manual.facility
  const allowed = [
    'https://www.openstreetmap.org/',
    ...(siteAddress === undefined ? [] : [siteAddress]),
  ]
  return {
    ending: 'made',
    faults: [
      ...said,
      ...faultsOfValue(manual),
      ...someOutputs(manual, { ...assets, words }, chance).flatMap((o) => [
        ...faultsOfOutput(o, allowed),
        ...alsoIn(o),
      ]),
    ],
  }
}

/** Demos are large, so most runs are made with the small facility. */
const drawnFacilities: readonly FacilityName[] = [
  ...Array.from({ length: 16 }, () => 'shaken' as const),
  'brambleford',
  'brambleford',
  'ostmere',
  'larkmoor',
]

/**
 * A subject of facility folders.
 * @param isMeant Which of the files are changed.
 */
const ofFolders =
  (names: readonly FacilityName[], isMeant: (file: string) => boolean, form: Form): Subject =>
  async (ground, chance) => {
    const name = chance.oneOf(names)
    const files = ground.facilities[name]
    const file = chance.oneOf([...files.keys()].filter(isMeant))
    const mutated = mutate(files.get(file) ?? Buffer.alloc(0), form, chance)
    const all = new Map([...files, [file, mutated.file] as const])
    const shelf = name === 'shaken' ? ground.small : ground.whole
    const seen = await inFolder(ground, all, (root) =>
      lookAtFolder(root, all, shelf, ground, chance),
    )
    return { file: `${name}/${file}`, by: mutated.by, ...seen }
  }

export const facilityFile = ofFolders(
  drawnFacilities,
  (file) => file === 'facility.yaml',
  'entries',
)
export const tables = ofFolders(['shaken'], (file) => file.endsWith('.csv'), 'table')
export const ownProcedures = ofFolders(
  ['shaken'],
  (file) => file.startsWith('procedures/'),
  'entries',
)
export const railLines = ofFolders(
  ['shaken', 'shaken', 'shaken', 'larkmoor'],
  (file) => /^rail\./.test(file),
  'points',
)
