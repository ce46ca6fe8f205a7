import path from 'node:path'

/** What is sent back for a request. */
export type Answer = {
  readonly status: number
  readonly type: string
  readonly body: string | Uint8Array
  readonly headers?: Readonly<Record<string, string>>
}

/** Browsers keep nothing, guess no types, and show no page inside another. */
export const guardHeaders: Readonly<Record<string, string>> = {
  'cache-control': 'no-store',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'cross-origin-resource-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'referrer-policy': 'no-referrer',
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.txt': 'text/plain; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.ics': 'text/calendar; charset=utf-8',
  '.pdf': 'application/pdf',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
}

/** What a browser is told of a file by its name. */
export const typeOfFile = (name: string): string =>
  types[path.posix.extname(name)] ?? 'application/octet-stream'

export const plain = (status: number, body: string): Answer => ({
  status,
  type: 'text/plain; charset=utf-8',
  body,
})

/** The path asked for, without what stands in codes; undefined when it cannot be read. */
export function pathOf(url: string): string | undefined {
  try {
    return decodeURIComponent(new URL(url, 'http://localhost').pathname)
  } catch {
    return undefined
  }
}

/**
 * Whether a request calls this server by this computer's own names. A page elsewhere whose name leads
 * here (a name given a new address after its page was opened) would otherwise read what is served,
 * contacts included.
 * @param host The header, as it was sent.
 */
export const isOurHost = (host: string | undefined, port: number): boolean =>
  host === `127.0.0.1:${port}` || host === `localhost:${port}`

export const notOurHost: Answer = plain(
  421,
  'This answers on this computer only, under its own address',
)
