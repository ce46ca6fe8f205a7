import { escapeHtml } from '../../render/text/escape-html.ts'
import { type Answer, pathOf, plain, typeOfFile } from '../loopback/guard.ts'

/** Makes a file when it is asked for. */
export type FileMaker = () => string | Uint8Array | Promise<Uint8Array>

/** What is shown now: files by path, or, while the input has faults, a page that lists them. */
export type Shown = {
  readonly files: ReadonlyMap<string, FileMaker>
  readonly faults: string | undefined
}

/** Where open pages listen for changes. */
export const changesPath = '/changes-of-this-preview'
const reloader = `<script>new EventSource(${JSON.stringify(changesPath)}).onmessage=()=>location.reload()</script>`

const faultsPage = (faults: string): string =>
  `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Faults in the input</title><body style="font:16px/1.5 system-ui;margin:2rem"><h1>The input has faults</h1><p>The last good pages come back as soon as they are mended.</p><pre style="white-space:pre-wrap">${escapeHtml(faults)}</pre>${reloader}</body></html>`

/** The page or file at a path of the site. */
export async function answer(url: string, { files, faults }: Shown): Promise<Answer> {
  const asked = pathOf(url)
  if (asked === undefined) return plain(400, 'This address cannot be read')
  const name = asked.replace(/^\/+/, '').replace(/(^|\/)$/, '$1index.html')
  const type = typeOfFile(name)
  const html = type.startsWith('text/html')
  if (html && faults !== undefined) return { status: 200, type, body: faultsPage(faults) }
  const data = await files.get(name)?.()
  if (data === undefined) return plain(404, `There is no page ${name}`)
  const body = html ? String(data).replace('</body>', `${reloader}</body>`) : data
  return { status: 200, type, body }
}
