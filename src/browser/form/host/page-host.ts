import type { Words } from '../../../validate/schemas/words.ts'
import type { Host, Making, Saved, Work } from '../contract.ts'
import { makeInPage } from '../workshop/make-in-page.ts'
import type { Workshop } from '../workshop/making-site.ts'
import { handOver } from './hand-over.ts'
import { besides, keep } from './kept.ts'
import { facilityFile, type Picked, textOf } from './picked.ts'
import type { Place } from './place.ts'
import { showProducts } from './products.ts'

/** What a page that stands alone works with. */
export type PageGiven = {
  readonly words: Words
  readonly workshop: Workshop
  readonly work: Work
  /** Where what was made is offered. */
  readonly shelf: HTMLElement
}

/** Files as they were picked, with what was typed and not saved the last time. */
export type Begun = Picked & { readonly draft: string | undefined }

async function written(handle: FileSystemFileHandle, text: string): Promise<void> {
  const stream = await handle.createWritable()
  await stream.write(text)
  await stream.close()
}

const textIn = async (handle: FileSystemFileHandle): Promise<string> =>
  textOf(new Uint8Array(await (await handle.getFile()).arrayBuffer()))

/** The browser alone: it writes files where it can, else it hands them over to be put away. */
export function pageHost(begun: Begun, given: PageGiven): Place {
  const { words, workshop, work, shelf } = given
  let { handle } = begun
  let saved = begun.files.get(facilityFile) ?? ''
  const keepDraft = (draft: string): void => {
    keep({ name: begun.name, saved, draft, files: besides(begun.files, facilityFile) })
  }
  const save = async (text: string): Promise<Saved> => {
    const { showSaveFilePicker } = globalThis.window
    try {
      if (handle) {
        const now = await textIn(handle)
        if (now !== saved) {
          saved = now
          return { kind: 'changed', text: now }
        }
      } else if (showSaveFilePicker)
        handle = await showSaveFilePicker({ suggestedName: facilityFile })
      if (handle) await written(handle, text)
      else handOver(facilityFile, text, 'application/yaml')
    } catch {
      return { kind: 'failed', why: words.maker.notWritten }
    }
    saved = text
    keepDraft(text)
    return { kind: 'saved' }
  }
  const host: Host = {
    kind: 'page',
    open: async () => ({ name: begun.name, files: begun.files, draft: begun.draft }),
    save,
    keep: keepDraft,
    make: async (files, tell) => {
      shelf.replaceChildren()
      const made = await makeInPage({ files, work, words, workshop }, tell)
      if (!made) return
      showProducts(shelf, made, words)
      shelf.scrollIntoView({ block: 'nearest' })
      const address = URL.createObjectURL(new Blob([made.oneFile], { type: 'text/html' }))
      const done: Making = { kind: 'made', address, text: words.maker.madeHere }
      tell(done)
    },
  }
  return { host, workbooks: () => begun.workbooks }
}
