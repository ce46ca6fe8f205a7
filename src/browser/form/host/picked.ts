import { facilityFile } from '../../../model/form-exchange.ts'
import { tableText } from '../../../read/table-text.ts'
import { element } from '../../element.ts'

/** Files that somebody has picked. */
export type Picked = {
  readonly name: string
  readonly files: ReadonlyMap<string, string>
  readonly workbooks: ReadonlyMap<string, Uint8Array>
  /** The files as something to write into, by name, where the browser has that. */
  readonly handles: ReadonlyMap<string, FileSystemFileHandle>
}

/** A text with its mark of order, so that it is saved as it was. */
export const textOf = (bytes: Uint8Array): string =>
  new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes)

const bytesOfFile = async (file: File): Promise<Uint8Array> =>
  new Uint8Array(await file.arrayBuffer())

const isYaml = ({ name }: { readonly name: string }): boolean => /\.ya?ml$/i.test(name)

/** The file among several that says the facts of a fair. */
const facilityAmong = (files: readonly File[]): File | undefined =>
  files.find(({ name }) => name === facilityFile) ?? files.find(isYaml)

/** A table among picked files: its text, or the bytes of a workbook. */
async function tableIn(file: File): Promise<string | Uint8Array> {
  const bytes = await bytesOfFile(file)
  return (/\.xlsx$/i.test(file.name) ? undefined : tableText(bytes)) ?? bytes
}

/** A name as a facility file takes it, for one that a person has given. */
const plainName = (name: string): string => name.replaceAll(/[^\w.-]+/g, '-')

/** Lets somebody pick one table. */
export async function pickTable(): Promise<
  { readonly name: string; readonly data: string | Uint8Array } | undefined
> {
  const [file] = await fromInput(false)
  return file && { name: plainName(file.name), data: await tableIn(file) }
}

/** @returns undefined where no facility file is among them. */
async function readPicked(
  files: readonly File[],
  handles: readonly FileSystemFileHandle[] = [],
): Promise<Picked | undefined> {
  const facility = facilityAmong(files)
  if (!facility) return undefined
  const texts = new Map([[facilityFile, textOf(await bytesOfFile(facility))]])
  const workbooks = new Map<string, Uint8Array>()
  for (const file of files) {
    if (file === facility) continue
    const data = await tableIn(file)
    if (typeof data !== 'string') workbooks.set(file.name, data)
    else texts.set(isYaml(file) ? `procedures/${file.name}` : file.name, data)
  }
  const writable = handles.map((handle): [string, FileSystemFileHandle] => [
    handle.name === facility.name ? facilityFile : handle.name,
    handle,
  ])
  return { name: facility.name, files: texts, workbooks, handles: new Map(writable) }
}

function fromInput(multiple: boolean): Promise<readonly File[]> {
  return new Promise((resolve) => {
    const input = element('input')
    input.type = 'file'
    input.multiple = multiple
    input.hidden = true
    const done = (): void => {
      input.remove()
      resolve([...(input.files ?? [])])
    }
    input.addEventListener('change', done)
    input.addEventListener('cancel', done)
    // Some browsers show their picker only for what stands in the page.
    document.body.append(input)
    input.click()
  })
}

/** Lets somebody pick a facility file and the tables beside it; undefined where nothing was. */
export async function pick(): Promise<Picked | undefined | 'no-facility'> {
  const { showOpenFilePicker } = globalThis.window
  if (!showOpenFilePicker) {
    const files = await fromInput(true)
    return files.length === 0 ? undefined : ((await readPicked(files)) ?? 'no-facility')
  }
  try {
    const handles = await showOpenFilePicker({ multiple: true })
    const files = await Promise.all(handles.map((handle) => handle.getFile()))
    return (await readPicked(files, handles)) ?? 'no-facility'
  } catch {
    return undefined
  }
}
