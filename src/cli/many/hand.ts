import { keepBrowser } from '../../print/browser/keep-browser.ts'
import { noBrowser } from '../../print/browser/no-browser.ts'
import { type ExitCode, exit, type Io } from '../io.ts'
import { keepTexts } from '../kept/kept-texts.ts'
import type { Folders } from '../load/load-manual.ts'
import type { ListedFacility } from './facility-list.ts'
import { makeOne } from './make-one.ts'

/** One facility that another process is to make, with all that it has to know. */
export type Task = {
  readonly facility: ListedFacility
  readonly date: string | undefined
  readonly quiet: boolean
  readonly needPdfs: boolean
  readonly folders: Folders
  readonly today: string
  readonly colors: boolean
  readonly cwd: string
  /** Why nothing can be printed. */
  readonly unprinted: string
}

/**
 * Makes the facilities that the process which has started this one hands over, one after the other,
 * and tells it what came of each; ends when that one has ended or has no more.
 */
export function lendHand(io: Io): Promise<ExitCode> {
  const make = async (task: Task): Promise<void> => {
    const { facility, today, colors, cwd, unprinted, ...job } = task
    const browser = keepBrowser(async () => ({ ...noBrowser([]), message: unprinted }))
    process.send?.(await makeOne(facility, { ...job, browser, io: { ...io, today, colors, cwd } }))
  }
  process.on('message', (task: Task) => void make(task))
  return new Promise((resolve) =>
    process.once('disconnect', () => {
      keepTexts()
      resolve(exit.fine)
    }),
  )
}
