import { assembleManual } from '../../../src/cli/load/assemble-manual.ts'
import type { LoadedFacility } from '../../../src/cli/load/load-facility.ts'
import { hasErrors } from '../../../src/model/problem.ts'
import { readYaml, type SourceTree } from '../../../src/read/read-yaml.ts'
import { checkFacility } from '../../../src/validate/check-facility.ts'
import type { LibraryTrees } from '../../../src/validate/check-library.ts'
import type { Chance } from '../chance.ts'
import { type Ground, shelfOf, today } from '../ground.ts'
import { faultsOfOutput, faultsOfValue } from '../judge/outputs.ts'
import { faultsOfProblems } from '../judge/problems.ts'
import { someOutputs } from '../make-outputs.ts'
import { mutate } from '../mutations/mutate.ts'
import type { Subject } from './subject.ts'

/** A facility without files beside its own, whatever the library. */
function facilityOf({ facilities }: Ground): Omit<LoadedFacility, 'files'> {
  const text = facilities.brambleford.get('facility.yaml')?.toString('utf8') ?? ''
  const tree = readYaml({ path: 'facility.yaml', text }).value
  const { value, problems } = tree ? checkFacility(tree) : { value: undefined, problems: [] }
  return { facility: value, date: today, problems }
}

/** Where a file stands among the trees. */
type Slot = { readonly kind: keyof LibraryTrees; readonly i?: number; readonly tree: SourceTree }

const slotsOf = (trees: LibraryTrees, kinds: readonly (keyof LibraryTrees)[]): readonly Slot[] =>
  kinds.flatMap((kind) => {
    const at = trees[kind]
    return 'file' in at ? [{ kind, tree: at }] : at.map((tree, i) => ({ kind, i, tree }))
  })

const withTree = (trees: LibraryTrees, { kind, i }: Slot, tree: SourceTree): LibraryTrees => {
  const at = trees[kind]
  return { ...trees, [kind]: 'file' in at || i === undefined ? tree : at.with(i, tree) }
}

/** A subject of some kinds of files of the library. */
const ofLibrary =
  (kinds: (trees: LibraryTrees) => readonly (keyof LibraryTrees)[]): Subject =>
  async (ground, chance) => {
    const shelf = chance.happens(0.9) ? ground.small : ground.whole
    const slot = chance.oneOf(slotsOf(shelf.trees, kinds(shelf.trees)))
    const { path } = slot.tree.file
    const { file, by } = mutate(Buffer.from(slot.tree.file.text), 'entries', chance)
    const text = file.toString('utf8')
    const read = readYaml({ path, text })
    const seen = { file: path, by }
    const textOf = (name: string): string | undefined => (name === path ? text : undefined)
    if (!read.value || hasErrors(read.problems))
      return { ...seen, ending: 'refused', faults: faultsOfProblems(read.problems, textOf) }
    const checked = shelfOf(withTree(shelf.trees, slot, read.value), ground.sourceIds)
    return { ...seen, ...lookAt(checked, textOf, ground, chance) }
  }

function lookAt(
  checked: ReturnType<typeof shelfOf>,
  textOf: (file: string) => string | undefined,
  ground: Ground,
  chance: Chance,
) {
  const { manual, problems } = assembleManual(facilityOf(ground), checked, ground.sources)
  const said = faultsOfProblems(problems, textOf)
  if (!manual || !checked.value)
    return {
      ending: 'refused',
      faults: hasErrors(problems) ? said : [...said, 'not made, and nobody says why'],
    } as const
  const assets = { ...ground.assets, words: checked.value.words }
  const outputs = someOutputs(manual, assets, chance)
  return {
    ending: 'made',
    faults: [
      ...said,
      ...faultsOfValue(manual),
      ...outputs.flatMap((o) => faultsOfOutput(o, ['https://www.openstreetmap.org/'])),
    ],
  } as const
}

const named = ['words', 'facts'] as const

export const libraryFiles = ofLibrary((trees) =>
  (Object.keys(trees) as (keyof LibraryTrees)[]).filter((kind) => !named.some((n) => n === kind)),
)
export const words = ofLibrary(() => ['words'])
export const facts = ofLibrary(() => ['facts'])
