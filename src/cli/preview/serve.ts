import { createServer, type Server, type ServerResponse } from 'node:http'
import { answer, changesPath, pathOf, refusal, type Shown } from './answer.ts'

/** A preview that is being served. */
export type Served = {
  readonly address: string
  /** Makes every open page load again. */
  readonly changed: () => void
  readonly close: () => Promise<void>
}

/** Browsers keep nothing, guess no types, and show no page inside another. */
const headers = {
  'cache-control': 'no-store',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'cross-origin-resource-policy': 'same-origin',
}

const portOf = (server: Server): number => {
  const address = server.address()
  return typeof address === 'object' && address ? address.port : 0
}

function createPageServer(current: () => Shown, listeners: Set<ServerResponse>): Server {
  const server = createServer((request, response) => {
    const url = request.url ?? '/'
    const refused = refusal(request.method ?? '', request.headers.host, portOf(server))
    if (refused === undefined && pathOf(url) === changesPath) {
      response.writeHead(200, { ...headers, 'content-type': 'text/event-stream' })
      response.write(': open\n\n')
      listeners.add(response)
      request.on('close', () => listeners.delete(response))
      return
    }
    const { status, type, body } = refused ?? answer(url, current())
    response.writeHead(status, { ...headers, 'content-type': type })
    response.end(request.method === 'HEAD' ? undefined : body)
  })
  return server
}

function stop(server: Server, listeners: Set<ServerResponse>): Promise<void> {
  return new Promise((closed) => {
    for (const l of listeners) l.end()
    server.close(() => closed())
    server.closeAllConnections()
  })
}

/**
 * Serves what `current` returns on the loopback address.
 * @param port 0 lets the system choose one that is free.
 * @throws Error when the port is taken or not allowed.
 */
export function serve(current: () => Shown, port: number): Promise<Served> {
  const listeners = new Set<ServerResponse>()
  const server = createPageServer(current, listeners)
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, '127.0.0.1', () =>
      resolve({
        address: `http://127.0.0.1:${portOf(server)}/`,
        changed: () => {
          for (const l of listeners) l.write('data: changed\n\n')
        },
        close: () => stop(server, listeners),
      }),
    )
  })
}
