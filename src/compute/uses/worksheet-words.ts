import type { WorksheetWords } from '../../model/worksheet-words.ts'
import type { WorksheetFile } from '../../validate/schemas/worksheets.ts'

/** What the files of content/worksheets say, as one. */
export const worksheetWords = (files: readonly WorksheetFile[]): WorksheetWords => ({
  calculations: Object.assign({}, ...files.map((f) => f.calculations ?? {})),
  worksheets: Object.assign({}, ...files.map((f) => f.worksheets ?? {})),
  reasons: Object.assign({}, ...files.map((f) => f.reasons ?? {})),
  noNumber: files.flatMap((f) => f['no-number'] ?? [])[0] ?? { unknown: '', outside: '', any: '' },
})
