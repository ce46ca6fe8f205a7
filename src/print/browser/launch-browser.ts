import { existsSync } from 'node:fs'
import type { Browser } from 'puppeteer'
import { launchFlags } from './launch-flags.ts'
import type { Machine } from './machine.ts'

/** Page margin boxes, which carry the running heads and page numbers, came with version 131. */
const OLDEST_MAJOR = 131

/** A whole binder on a slow machine takes longer than the driver's own limit of three minutes. */
const PROTOCOL_TIMEOUT_MS = 600_000

/** A busy machine may need longer than the driver's thirty seconds to start a browser. */
const START_TIMEOUT_MS = 120_000

/** How to start one executable. */
export type Launch = {
  readonly executable: string
  /** True for a headless shell, which has no other mode. */
  readonly shell: boolean
  readonly machine: Machine
}

const major = (version: string): number => Number(/\/(\d+)\./.exec(version)?.[1] ?? 0)

/**
 * Starts a browser for printing.
 * @throws Error when it does not start, or is too old to print running heads.
 */
export const launchBrowser = async ({ executable, shell, machine }: Launch): Promise<Browser> => {
  // Loaded only when a browser is really started: it is the largest package of all.
  const { default: puppeteer } = await import('puppeteer')
  const browser = await puppeteer.launch({
    executablePath: executable,
    headless: shell ? 'shell' : true,
    args: launchFlags(machine, existsSync),
    env: { ...machine.env },
    timeout: START_TIMEOUT_MS,
    protocolTimeout: PROTOCOL_TIMEOUT_MS,
    // No port is opened on the machine, and less time is spent on messages than with a socket.
    pipe: true,
  })
  const version = await browser.version()
  if (major(version) >= OLDEST_MAJOR) return browser
  await browser.close()
  throw new Error(`${version} is too old: version ${OLDEST_MAJOR} or newer is needed`)
}
