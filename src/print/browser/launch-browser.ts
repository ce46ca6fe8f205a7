import { existsSync } from 'node:fs'
import { rm } from 'node:fs/promises'
import type { Browser } from 'puppeteer'
import { endWithPages } from './end-browser.ts'
import { launchFlags } from './launch-flags.ts'
import type { Machine } from './machine.ts'
import { ownFolder } from './own-folder.ts'

/** Page margin boxes, which carry the running heads and page numbers, came with version 131. */
const OLDEST_MAJOR = 131

/**
 * How long a browser may take over one thing that is asked of it before it counts as one that hangs.
 * A part of a binder takes seconds, on a slow machine with much else to do a minute or two.
 */
const ANSWER_WITHIN_MS = 300_000

/** A busy machine may need longer than the driver's thirty seconds to start a browser. */
const START_TIMEOUT_MS = 120_000

/** How to start one executable. */
export type Launch = {
  readonly executable: string
  /** True for a headless shell, which has no other mode. */
  readonly shell: boolean
  readonly machine: Machine
  /** Limit of time for an answer, ms. */
  readonly answerWithin?: number
}

const major = (version: string): number => Number(/\/(\d+)\./.exec(version)?.[1] ?? 0)

/**
 * Starts a browser for printing.
 * @throws Error when it does not start, or is too old to print running heads.
 */
export const launchBrowser = async ({
  executable,
  shell,
  machine,
  answerWithin = ANSWER_WITHIN_MS,
}: Launch): Promise<Browser> => {
  // Loaded only when a browser is really started: it is the largest package of all.
  const { default: puppeteer } = await import('puppeteer')
  // One of ours, since nobody would delete the driver's own after a kill.
  const profile = await ownFolder(machine.temporary, 'ovalkeep-browser')
  const remove = (): Promise<void> => rm(profile, { recursive: true, force: true, maxRetries: 3 })
  const browser = await puppeteer
    .launch({
      userDataDir: profile,
      executablePath: executable,
      headless: shell ? 'shell' : true,
      args: launchFlags(machine, existsSync),
      env: { ...machine.env },
      timeout: START_TIMEOUT_MS,
      protocolTimeout: answerWithin,
      // No port is opened on the machine, and less time is spent on messages than with a socket.
      pipe: true,
    })
    .catch(async (error: unknown) => {
      await remove()
      throw error
    })
  browser.process()?.once('exit', () => void remove().catch(() => undefined))
  endWithPages(browser)
  const version = await browser.version()
  if (major(version) >= OLDEST_MAJOR) return browser
  await browser.close()
  throw new Error(`${version} is too old: version ${OLDEST_MAJOR} or newer is needed`)
}
