import path from 'node:path'
import { escapeHtml } from '../../render/text/escape-html.ts'

/** What is shown now: files by path, or, while the input has faults, a page that lists them. */
export type Shown = {
  readonly files: ReadonlyMap<string, () => string | Uint8Array>
  readonly faults: string | undefined
}

export type Answer = {
  readonly status: 200 | 400 | 404 | 405 | 421
  readonly type: string
  readonly body: string | Uint8Array
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.json': 'application/json',
  '.txt': 'text/plain; charset=utf-8',
}

/** Where open pages listen for changes. */
export const changesPath = '/changes-of-this-preview'
const reloader = `<script>new EventSource(${JSON.stringify(changesPath)}).onmessage=()=>location.reload()</script>`

const faultsPage = (faults: string): string =>
  `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Faults in the input</title><body style="font:16px/1.5 system-ui;margin:2rem"><h1>The input has faults</h1><p>The last good pages come back as soon as they are mended.</p><pre style="white-space:pre-wrap">${escapeHtml(faults)}</pre>${reloader}</body></html>`

const plain = (status: Answer['status'], body: string): Answer => ({
  status,
  type: 'text/plain; charset=utf-8',
  body,
})

/** The path of a page asked for, below the site; undefined when it cannot be read. */
export function pathOf(url: string): string | undefined {
  try {
    return decodeURIComponent(new URL(url, 'http://localhost').pathname)
  } catch {
    return undefined
  }
}

/**
 * Why a request is not answered at all. Only this computer's own names are: a page elsewhere whose
 * name leads here (a name given a new address after its page was opened) would otherwise read the
 * manual, contacts included.
 */
export function refusal(
  method: string,
  host: string | undefined,
  port: number,
): Answer | undefined {
  if (host !== `127.0.0.1:${port}` && host !== `localhost:${port}`)
    return plain(421, 'This preview answers on this computer only, under its own address')
  return method === 'GET' || method === 'HEAD' ? undefined : plain(405, 'Pages can only be read')
}

/** The page or file at a path of the site. */
export function answer(url: string, { files, faults }: Shown): Answer {
  const asked = pathOf(url)
  if (asked === undefined) return plain(400, 'This address cannot be read')
  const name = asked.replace(/^\/+/, '').replace(/(^|\/)$/, '$1index.html')
  const type = types[path.posix.extname(name)] ?? 'application/octet-stream'
  const html = type.startsWith('text/html')
  if (html && faults !== undefined) return { status: 200, type, body: faultsPage(faults) }
  const data = files.get(name)?.()
  if (data === undefined) return plain(404, `There is no page ${name}`)
  const body = html ? String(data).replace('</body>', `${reloader}</body>`) : data
  return { status: 200, type, body }
}
