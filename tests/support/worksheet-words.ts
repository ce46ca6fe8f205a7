import { loadLibrary } from '../../src/cli/load/load-library.ts'
import { worksheetWords } from '../../src/compute/uses/worksheet-words.ts'
import type { SourceTree } from '../../src/read/read-yaml.ts'
import type { Library } from '../../src/validate/check-library.ts'
import { checkSchema } from '../../src/validate/check-schema.ts'
import { factWords } from '../../src/validate/fact-words.ts'
import { facts } from '../../src/validate/schemas/facts.ts'
import { worksheets } from '../../src/validate/schemas/worksheets.ts'
import { folders } from './demo.ts'

const readFacts = (tree: SourceTree): Library['facts'] => {
  const file = checkSchema(tree, facts).value
  return file ? [{ value: file, tree, path: [], schema: facts }] : []
}

const { value } = await loadLibrary(folders.content, folders.shared)

/** The words of the library's facts and worksheets, read once. */
export const libraryWords = {
  facts: factWords({ facts: value ? readFacts(value.facts) : [] }),
  worksheets: worksheetWords(
    (value?.worksheets ?? []).flatMap((tree) => checkSchema(tree, worksheets).value ?? []),
  ),
}
