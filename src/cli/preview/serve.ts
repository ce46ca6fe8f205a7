import type { ServerResponse } from 'node:http'
import { guardHeaders, pathOf, plain } from '../loopback/guard.ts'
import { listen } from '../loopback/listen.ts'
import { answer, changesPath, type Shown } from './answer.ts'

/** A preview that is being served. */
export type Served = {
  readonly address: string
  /** Makes every open page load again. */
  readonly changed: () => void
  readonly close: () => Promise<void>
}

/**
 * Serves what `current` returns on the loopback address.
 * @param port 0 lets the system choose one that is free.
 * @throws Error when the port is taken or not allowed.
 */
export async function serve(current: () => Shown, port: number): Promise<Served> {
  const listeners = new Set<ServerResponse>()
  const server = await listen(async (request, response) => {
    const { method = '', url = '/' } = request
    if (method !== 'GET' && method !== 'HEAD') return plain(405, 'Pages can only be read')
    if (pathOf(url) !== changesPath) return answer(url, current())
    response.writeHead(200, { ...guardHeaders, 'content-type': 'text/event-stream' })
    response.write(': open\n\n')
    listeners.add(response)
    request.on('close', () => listeners.delete(response))
    return 'taken'
  }, port)
  return {
    address: server.address,
    changed: () => {
      for (const l of listeners) l.write('data: changed\n\n')
    },
    close: () => {
      for (const l of listeners) l.end()
      return server.close()
    },
  }
}
