import { readFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import path from 'node:path'

const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
}

/**
 * Serves a site on this computer alone.
 * @param folder what is served; `gone` are files that it gives up, `asked` what it was asked for.
 */
export async function siteServer(folder: string) {
  const gone = new Set<string>()
  const asked: string[] = []
  const server = createServer(async ({ url = '/' }, answer) => {
    const name = url.replace(/[?#].*/, '').replace(/\/$/, '/index.html')
    asked.push(name)
    const data = await readFile(path.join(folder, name)).catch(() => undefined)
    const type = kinds[path.extname(name)] ?? 'application/octet-stream'
    if (data === undefined || gone.has(name)) answer.writeHead(404).end()
    else answer.writeHead(200, { 'content-type': type }).end(data)
  })
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  return {
    base: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    gone,
    asked,
    close: () => {
      server.closeAllConnections()
      server.close()
    },
  }
}
