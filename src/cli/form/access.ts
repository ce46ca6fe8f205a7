import { timingSafeEqual } from 'node:crypto'
import type { IncomingMessage } from 'node:http'
import { type Answer, plain } from '../loopback/guard.ts'

/** What lets a browser in: it stands in the address that is printed, then in a cookie. */
export type Key = string

const sameText = (a: string, b: string): boolean => {
  const [left, right] = [Buffer.from(a), Buffer.from(b)]
  return left.length === right.length && timingSafeEqual(left, right)
}

/** Cookies do not tell ports apart, so that of each program has a name of its own. */
const cookieName = (port: number): string => `ovalkeep-form-${port}`

function keyInCookie(request: IncomingMessage, port: number): string | undefined {
  const name = `${cookieName(port)}=`
  return (request.headers.cookie ?? '')
    .split(';')
    .map((part) => part.trim())
    .find((part) => part.startsWith(name))
    ?.slice(name.length)
}

/** Whether a request comes from the browser that was let in. */
export const isLetIn = (request: IncomingMessage, key: Key, port: number): boolean =>
  sameText(keyInCookie(request, port) ?? '', key)

/** Lets a browser in that brings the key in its address, and takes it out of the address. */
export function letIn(url: string, key: Key, port: number): Answer | undefined {
  const given = new URL(url, 'http://localhost').searchParams.get('key')
  if (given === null || !sameText(given, key)) return undefined
  return {
    ...plain(303, ''),
    headers: {
      location: '/',
      'set-cookie': `${cookieName(port)}=${key}; HttpOnly; SameSite=Strict; Path=/`,
    },
  }
}

/**
 * Whether the page itself asks for something to be done. Ports of one computer share their cookies,
 * so it is the origin that tells a page of another program from ours.
 */
export function isOwnPage({ headers }: IncomingMessage): boolean {
  const site = headers['sec-fetch-site']
  return (
    headers.origin === `http://${headers.host}` && (site === undefined || site === 'same-origin')
  )
}
