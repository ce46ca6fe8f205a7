import type { Machine } from './machine.ts'

/**
 * Flags without which the same pages come out differently from one browser to the next, or reach
 * for the network.
 */
const printFlags = [
  // Without it the headless shells round glyph widths, and lines and pages break elsewhere.
  '--font-render-hinting=none',
  '--disable-gpu',
  // A manual is made from what it is given: nothing is ever looked up outside.
  '--host-resolver-rules=MAP * ~NOTFOUND',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-pings',
  '--no-default-browser-check',
]

const withoutSandbox = ['--no-sandbox']

/** Files by which a program knows that it runs in a container. */
const containerMarks = ['/.dockerenv', '/run/.containerenv']

/**
 * Whether the browser can lock itself in. On Linux its sandbox needs rights that a container or a
 * build machine does not give, and root may not use it at all.
 * @param exists Whether there is such a file.
 */
function hasSandbox({ platform, env, user }: Machine, exists: (file: string) => boolean): boolean {
  if (platform !== 'linux') return true
  return user !== 0 && !env['CI'] && !env['container'] && !containerMarks.some(exists)
}

/** The flags with which a browser is started on a machine. */
export const launchFlags = (machine: Machine, exists: (file: string) => boolean): string[] =>
  hasSandbox(machine, exists) ? [...printFlags] : [...printFlags, ...withoutSandbox]
