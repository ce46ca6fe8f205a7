import type { Manual } from '../model/manual.ts'
import type { BuildCounts } from '../write/build-record.ts'
import type { MadeAt } from '../write/last-build.ts'
import type { Printed } from './print-manual.ts'

/** How much of everything a manual has. */
export const countsOf = (manual: Manual, pages: number): BuildCounts => ({
  pages,
  figures: manual.figures.length,
  estimates: manual.figures.filter((f) => f.estimate).length,
  findings: manual.findings.length,
  worksheets: manual.worksheets.length,
  procedures: manual.procedures.length,
})

/** What a build is summed up in, on one line. */
export type Built = {
  readonly name: string
  readonly counts: BuildCounts
  /** Undefined where no browser could print. */
  readonly printed:
    | (Pick<Printed, 'binderPages' | 'fieldBookPages' | 'sheets' | 'toExchange'> & {
        readonly before: { readonly revision: string } | undefined
      })
    | undefined
  readonly files: number
  /** The folder that was written, as it is shown. */
  readonly folder: string
  readonly seconds: number
}

/** The last line of a build. */
export function summary({ name, counts: c, printed, files, folder, seconds }: Built): string {
  const paper = printed
    ? `, binder of ${printed.binderPages} pages, field book of ${printed.fieldBookPages}, ${printed.sheets} sheets`
    : ''
  const exchange = printed?.before
    ? `, ${printed.toExchange} leaves to exchange since revision ${printed.before.revision}`
    : ''
  return `${name}: ${c.pages} site pages${paper}${exchange}; ${c.figures} figures (${c.estimates} estimates), ${c.findings} findings; ${files} files in ${folder}; ${seconds.toFixed(1)} s`
}

/** What is said where nothing could be printed: which printed files stay, and of which revision. */
export function withoutPdfs(files: number, older: MadeAt | undefined): string {
  const made = 'The site and the figures were made; the PDFs were not.'
  if (files === 0) return made
  return older
    ? `${made} The ${files} PDFs of an earlier build stay; they are of REVISION ${older.revision}, ${older.date}, and the site says so beside them.`
    : `${made} The ${files} PDFs of the last build stay; they are of the same revision and date.`
}

/** Files of somebody else that were found in the folder and left there. */
export const keptText = (files: readonly string[]): string =>
  `Not made by this program and left where they are: ${files.slice(0, 5).join(', ')}${files.length > 5 ? ` and ${files.length - 5} more` : ''}`
