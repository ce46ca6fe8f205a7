import { loadLibrary, loadSources } from '../../../src/cli/load/load-library.ts'
import type { ComposeContext, ManualParts } from '../../../src/compose/context.ts'
import { namedNumber } from '../../../src/compose/context.ts'
import { computeFacility } from '../../../src/compute/compute-facility.ts'
import { hasErrors } from '../../../src/model/problem.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { checkFacility, type Facility } from '../../../src/validate/check-facility.ts'
import { checkLibrary, type Library } from '../../../src/validate/check-library.ts'
import { date, folders } from '../../support/demo.ts'
import { libraryWords } from '../../support/worksheet-words.ts'

async function readLibrary(): Promise<{
  readonly library: Library
  readonly references: ComposeContext['references']
}> {
  const [trees, references] = await Promise.all([
    loadLibrary(folders.content, folders.shared),
    loadSources(folders.shared),
  ])
  const library =
    trees.value && checkLibrary(trees.value, new Set(references.map((s) => s.id))).value
  if (!library) throw new Error('no library')
  return { library, references }
}

const read = readLibrary()

/** What every facility file begins with; a half-mile of stone dust, about which nothing else is known. */
export const halfMile = `id: tiny
name: Tiny Fair
place: { town: Nowhere }
units: us
paper: letter
oval: { lap: "2,640 ft", straight: 600 ft }
cushion: { material: stone-dust }
`

/** A file of a facility without faults, as checked. */
export function facilityOf(text: string): Facility {
  const tree = readYaml({ path: 'facility.yaml', text }).value
  const { value, problems } = tree ? checkFacility(tree) : { value: undefined, problems: [] }
  if (!value || hasErrors(problems))
    throw new Error(`no facility: ${problems.map((p) => p.message).join('; ')}`)
  return value
}

/**
 * What a composer works with at a facility.
 * @param text The file of the facility.
 * @param readings What lies beside the file, and tests of the material.
 * @param parts The other parts of the manual, as far as the composer asks for them.
 */
export async function contextFor(
  text: string,
  readings: Partial<Facility['imported'] & Pick<Facility, 'tests'>> = {},
  parts: Partial<ManualParts> = {},
): Promise<ComposeContext> {
  const { library, references } = await read
  const checked = facilityOf(text)
  const { tests, ...imported } = readings
  const facility = {
    ...checked,
    imported: { ...checked.imported, ...imported },
    tests: tests ?? checked.tests,
  }
  const { engine, locale, capabilities, known } = computeFacility(facility, libraryWords)
  const { file } = facility
  return {
    facility,
    engine,
    locale,
    known,
    library,
    references,
    date,
    here: {
      surface: file.cushion.material,
      rail: file.oval.rail ?? 'pylons',
      units: file.units,
      capabilities,
      si: (name) => namedNumber(name, { engine }),
    },
    parts: parts as ManualParts,
  }
}
