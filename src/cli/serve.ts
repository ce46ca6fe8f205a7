import { createServer, type Server, type ServerResponse } from 'node:http'
import path from 'node:path'

/** What is shown now: files by path, or, while the input has faults, a page that lists them. */
export type Shown = {
  readonly files: ReadonlyMap<string, () => string | Uint8Array>
  readonly faults: string | undefined
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

const changesPath = '/changes-of-this-preview'
const reloader = `<script>new EventSource(${JSON.stringify(changesPath)}).onmessage=()=>location.reload()</script>`

const escaped = (text: string): string =>
  text.replace(/[&<>]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;' })[c] ?? c)

const faultsPage = (faults: string): string =>
  `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Faults in the input</title><body style="font:16px/1.5 system-ui;margin:2rem"><h1>The input has faults</h1><p>The last good pages come back as soon as they are mended.</p><pre style="white-space:pre-wrap">${escaped(faults)}</pre>${reloader}</body></html>`

/**
 * Serves what `current` returns on the loopback address; `changed` makes every open page load
 * again.
 */
export function serve(
  current: () => Shown,
  port: number,
): Promise<{
  readonly address: string
  readonly changed: () => void
  readonly close: () => Promise<void>
}> {
  const listeners = new Set<ServerResponse>()
  const server: Server = createServer((request, response) => {
    const url = new URL(request.url ?? '/', 'http://localhost')
    if (url.pathname === changesPath) {
      response
        .writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' })
        .write(': open\n\n')
      listeners.add(response)
      request.on('close', () => listeners.delete(response))
      return
    }
    const { files, faults } = current()
    const name = decodeURIComponent(url.pathname)
      .replace(/^\/+/, '')
      .replace(/(^|\/)$/, '$1index.html')
    const type = types[path.posix.extname(name)] ?? 'application/octet-stream'
    const html = type.startsWith('text/html')
    if (html && faults !== undefined) {
      response
        .writeHead(200, { 'content-type': type, 'cache-control': 'no-store' })
        .end(faultsPage(faults))
      return
    }
    const data = files.get(name)?.()
    if (data === undefined) {
      response
        .writeHead(404, { 'content-type': 'text/plain; charset=utf-8' })
        .end(`There is no page ${name}`)
      return
    }
    response
      .writeHead(200, { 'content-type': type, 'cache-control': 'no-store' })
      .end(html ? String(data).replace('</body>', `${reloader}</body>`) : data)
  })
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, '127.0.0.1', () => {
      const address = server.address()
      resolve({
        address: `http://127.0.0.1:${typeof address === 'object' && address ? address.port : port}/`,
        changed: () => {
          for (const l of listeners) l.write('data: changed\n\n')
        },
        close: () =>
          new Promise((closed) => {
            for (const l of listeners) l.end()
            server.close(() => closed())
            server.closeAllConnections()
          }),
      })
    })
  })
}
