import { facilityFile } from '../../../model/form-exchange.ts'
import type { Words } from '../../../validate/schemas/words.ts'
import { classed } from '../../element.ts'
import { bytesOf } from '../workshop/base64.ts'
import { type Kept, readKept } from './kept.ts'
import type { Begun } from './page-host.ts'
import { pick } from './picked.ts'
import { type Offer, startScreen } from './start-screen.ts'

const nothing = { workbooks: new Map(), handles: new Map() } as const

/** A fair that has no file yet. */
const newFair = (): Begun => ({
  ...nothing,
  name: '',
  files: new Map([[facilityFile, '']]),
  draft: new Map(),
})

const fromKept = ({ name, saved, draft, files, workbooks }: Kept): Begun => ({
  handles: new Map(),
  workbooks: new Map(workbooks.map(([file, data]) => [file, bytesOf(data)])),
  name,
  files: new Map([[facilityFile, saved], ...files]),
  draft: new Map(draft),
})

/** What a page that stands alone begins with: what was kept, files that are picked, or nothing. */
export function beginInPage(root: HTMLElement, words: Words): Promise<Begun> {
  const kept = readKept()
  const said = classed('p', 'fault')
  said.setAttribute('role', 'alert')
  const open: Offer<Begun> = {
    title: words.maker.openFile,
    about: words.maker.openAbout,
    take: async () => {
      const picked = await pick()
      said.textContent = picked === 'no-facility' ? words.maker.noFacility : ''
      return picked === undefined || picked === 'no-facility'
        ? undefined
        : { ...picked, draft: new Map() }
    },
  }
  const goOn: readonly Offer<Begun>[] = kept
    ? [{ title: words.maker.goOn, about: words.maker.goOnAbout, take: async () => fromKept(kept) }]
    : []
  const begin: Offer<Begun> = {
    title: words.maker.newFair,
    about: words.maker.newAboutPage,
    take: async () => newFair(),
  }
  return startScreen(root, words, [{ list: [...goOn, begin, open] }], said)
}
