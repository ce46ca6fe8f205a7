import { existsSync } from 'node:fs'
import type { Environment } from './candidate.ts'

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

/**
 * The sandbox needs rights that a container or a build machine does not give, and root may not use
 * it at all.
 */
const withoutSandbox = ['--no-sandbox', '--no-zygote']

const inContainer = (env: Environment): boolean =>
  Boolean(env['container']) || existsSync('/.dockerenv') || existsSync('/run/.containerenv')

/**
 * @returns the flags for this machine: the sandbox stays on except for root, in a container, or
 * where CI is set.
 */
export const launchFlags = (env: Environment): string[] => {
  const sandboxed = process.getuid?.() !== 0 && !env['CI'] && !inContainer(env)
  return sandboxed ? [...printFlags] : [...printFlags, ...withoutSandbox]
}
