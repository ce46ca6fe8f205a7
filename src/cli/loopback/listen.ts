import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { Io } from '../io.ts'
import { type Answer, guardHeaders, isOurHost, notOurHost, plain } from './guard.ts'

/** A server on the loopback address. */
export type Listening = {
  readonly port: number
  /** `http://127.0.0.1:<port>/`. */
  readonly address: string
  readonly close: () => Promise<void>
}

/**
 * Answers one request, or takes the response over, as for a stream.
 * @param port Of this server.
 */
type Handle = (
  request: IncomingMessage,
  response: ServerResponse,
  port: number,
) => Promise<Answer | 'taken'>

/** How long whoever sends slowly may hold a place that others need, ms. */
type Patience = {
  readonly headersTimeout: number
  readonly requestTimeout: number
  readonly connectionsCheckingInterval: number
}

const usual: Patience = {
  headersTimeout: 5000,
  requestTimeout: 15_000,
  connectionsCheckingInterval: 1000,
}

const mostConnections = 64

function send(
  response: ServerResponse,
  { status, type, body, headers }: Answer,
  method = 'GET',
): void {
  response.writeHead(status, { ...guardHeaders, ...headers, 'content-type': type })
  response.end(method === 'HEAD' ? undefined : body)
}

/**
 * Serves on the loopback address. Requests that call it by another name are refused, whatever they
 * ask for; a fault of one request ends that request alone.
 * @param port 0 lets the system choose one that is free.
 * @throws Error when the port is taken or not allowed.
 */
export function listen(
  handle: Handle,
  port: number,
  patience: Patience = usual,
): Promise<Listening> {
  const server = createServer(patience, (request, response) => {
    const own = portOf()
    const answered = isOurHost(request.headers.host, own)
      ? handle(request, response, own)
      : Promise.resolve(notOurHost)
    answered
      .then((answer) => {
        if (answer !== 'taken') send(response, answer, request.method)
      })
      .catch(() => {
        if (response.headersSent) response.destroy()
        else send(response, plain(500, 'This went wrong here'), request.method)
      })
  })
  server.maxConnections = mostConnections
  const portOf = (): number => {
    const address = server.address()
    return typeof address === 'object' && address ? address.port : 0
  }
  const close = (): Promise<void> =>
    new Promise((closed) => {
      server.close(() => closed())
      server.closeAllConnections()
    })
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, '127.0.0.1', () =>
      resolve({ port: portOf(), address: `http://127.0.0.1:${portOf()}/`, close }),
    )
  })
}

/** The port that was typed; undefined when it is none, which then has been told. */
export function portFor(typed: string, io: Pick<Io, 'err'>): number | undefined {
  const port = typed.trim() === '' ? -1 : Number(typed)
  if (Number.isInteger(port) && port >= 0 && port <= 65535) return port
  io.err(`"${typed}" is no port; expected a number from 0 to 65535`)
  return undefined
}

/** Why a port cannot be used, and what to do. */
export function portText(port: number, fault: unknown): string {
  const { code, message } = fault as NodeJS.ErrnoException
  if (code === 'EADDRINUSE')
    return `Port ${port} is in use by another program. Leave --port out, and one that is free is taken.`
  if (code === 'EACCES')
    return `Port ${port} cannot be used: those below 1024 are kept for the system. Leave --port out.`
  return `Port ${port} cannot be used: ${message}`
}

/** Until somebody stops the program. */
export const interrupted = (): Promise<void> =>
  new Promise((resolve) => {
    process.once('SIGINT', () => resolve())
    process.once('SIGTERM', () => resolve())
  })
