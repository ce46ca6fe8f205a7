import { loadLibrary } from '../../src/cli/load/load-library.ts'
import { worksheetWords } from '../../src/compute/uses/worksheet-words.ts'
import { checkSchema } from '../../src/validate/check-schema.ts'
import { worksheets } from '../../src/validate/schemas/worksheets.ts'
import { folders } from './demo.ts'

const { value } = await loadLibrary(folders.content)

/** The words of the library's worksheets, read once. */
export const libraryWords = worksheetWords(
  (value?.worksheets ?? []).flatMap((tree) => checkSchema(tree, worksheets).value ?? []),
)
