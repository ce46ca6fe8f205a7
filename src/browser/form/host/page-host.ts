import { facilityFile } from '../../../model/form-exchange.ts'
import { tableText } from '../../../read/table-text.ts'
import type { Words } from '../../../validate/schemas/words.ts'
import type { FacilityFiles, Host, Making, Work } from '../contract.ts'
import { fromBytes } from '../workshop/base64.ts'
import { makeInPage } from '../workshop/make-in-page.ts'
import { printAssetsOf, type Workshop } from '../workshop/making-site.ts'
import { handOver } from './hand-over.ts'
import { besides, keep } from './kept.ts'
import { type Picked, pickTable, textOf } from './picked.ts'
import type { Place } from './place.ts'
import { printing } from './printing.ts'
import { showProducts } from './products.ts'
import { type Slot, savingFiles } from './save-files.ts'

/** What a page that stands alone works with. */
export type PageGiven = {
  readonly words: Words
  readonly workshop: Workshop
  readonly work: Work
  /** Where what was made is offered. */
  readonly shelf: HTMLElement
}

/** Files as they were picked, with what was typed and not saved the last time. */
export type Begun = Picked & { readonly draft: FacilityFiles }

/** What a file says, with its mark of order; a table in whatever encoding it was saved. */
const textFrom = (bytes: Uint8Array, name: string): string =>
  name === facilityFile ? textOf(bytes) : (tableText(bytes) ?? textOf(bytes))

const slotOf = (handle: FileSystemFileHandle, name: string): Slot => ({
  read: async () => textFrom(new Uint8Array(await (await handle.getFile()).arrayBuffer()), name),
  write: async (text) => {
    const stream = await handle.createWritable()
    await stream.write(text)
    await stream.close()
  },
})

/** A new file to write into; nothing where the browser has none, or wants a hand on the page first. */
async function newSlot(name: string): Promise<Slot | undefined> {
  const { showSaveFilePicker } = globalThis.window
  try {
    const handle = await showSaveFilePicker?.({ suggestedName: name })
    return handle && slotOf(handle, name)
  } catch (error) {
    if ((error as Error).name === 'SecurityError') return undefined
    throw error
  }
}

/** The browser alone: it writes files where it can, else it hands them over to be put away. */
export function pageHost(begun: Begun, given: PageGiven): Place {
  const { words, workshop, work, shelf } = given
  const saving = savingFiles({
    opened: begun.files,
    slots: new Map([...begun.handles].map(([name, handle]) => [name, slotOf(handle, name)])),
    newSlot,
    handOver: (name, text) =>
      handOver(name, text, name === facilityFile ? 'application/yaml' : 'text/csv'),
    notWritten: words.maker.notWritten,
  })
  const workbooks = new Map(begun.workbooks)
  let unsaved: FacilityFiles = begun.draft
  const keepDraft = (draft: FacilityFiles): void => {
    unsaved = draft
    const saved = saving.saved()
    keep({
      name: begun.name,
      saved: saved.get(facilityFile) ?? '',
      draft: [...draft].filter(([name, text]) => saved.get(name) !== text),
      files: besides(saved, facilityFile),
      workbooks: [...workbooks].map(([name, data]) => [name, fromBytes(data)]),
    })
  }
  const host: Host = {
    kind: 'page',
    open: async () => ({
      name: begun.name,
      files: begun.files,
      draft: begun.draft,
      head: '',
      workbooks: [...workbooks.keys()],
    }),
    save: async (files) => {
      const result = await saving.save(files)
      if (result.kind === 'saved') keepDraft(new Map())
      return result
    },
    keep: keepDraft,
    add: async () => {
      const picked = await pickTable()
      if (!picked) return undefined
      const { name, data } = picked
      if (typeof data === 'string') saving.known(name, data)
      else workbooks.set(name, data)
      keepDraft(unsaved)
      return { name, text: typeof data === 'string' ? data : undefined }
    },
    make: async (files, tell) => {
      shelf.replaceChildren()
      const made = await makeInPage({ files, work, words, workshop }, tell)
      if (!made) return
      const assets = await printAssetsOf(workshop, words)
      showProducts(shelf, made, words)
      shelf.append(printing(made.manual, assets))
      shelf.scrollIntoView({ block: 'nearest' })
      const address = URL.createObjectURL(new Blob([made.oneFile], { type: 'text/html' }))
      const done: Making = { kind: 'made', address, text: words.maker.madeHere }
      tell(done)
    },
  }
  return { host, workbooks: () => workbooks }
}
