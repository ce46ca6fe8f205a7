import type { MakingStage } from '../../../model/form-exchange.ts'
import type { Manual } from '../../../model/manual.ts'
import { hasErrors } from '../../../model/problem.ts'
import type { Words } from '../../../validate/schemas/words.ts'
import type { FacilityFiles, Making, Work } from '../contract.ts'
import { makeSite, type Workshop, zipped } from './making-site.ts'

/** A manual that was made in the page. */
export type MadeInPage = {
  readonly manual: Manual
  /** Stands in the names of its files. */
  readonly id: string
  /** The site as an archive. */
  readonly zip: Uint8Array
  readonly oneFile: string
  readonly pages: number
}

type Asked = {
  readonly files: FacilityFiles
  readonly work: Work
  readonly words: Words
  readonly workshop: Workshop
}

/** Lets the page show what was told before it is busy. */
const shown = (): Promise<void> => new Promise((done) => setTimeout(done, 30))

/**
 * Makes the site of what the answers say.
 * @returns undefined where they have faults or lack what nothing works without: a manual that leaves
 *   something out would be worse than none. Why has been told.
 */
export async function makeInPage(
  { files, work, words, workshop }: Asked,
  tell: (step: Making) => void,
): Promise<MadeInPage | undefined> {
  const stage = async (name: MakingStage): Promise<void> => {
    tell({ kind: 'stage', text: words.maker.stages[name] })
    await shown()
  }
  await stage('compute')
  const { manual, problems, standIns } = work(files)
  if (!manual || standIns.length > 0 || hasErrors(problems)) {
    tell({ kind: 'failed', why: words.maker.faults })
    return undefined
  }
  await stage('render')
  const { files: site, oneFile } = await makeSite(manual, words, workshop)
  await stage('write')
  const { id } = manual.facility
  const pages = site.filter(({ path }) => path.endsWith('.html')).length
  return { manual, id, zip: zipped(site, id, manual.date), oneFile, pages }
}
