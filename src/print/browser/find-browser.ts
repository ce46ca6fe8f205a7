import { existsSync } from 'node:fs'
import type { Browser } from 'puppeteer'
import { bundledBrowser } from './bundled-browser.ts'
import type { Candidate } from './candidate.ts'
import { launchBrowser } from './launch-browser.ts'
import { type Environment, type Machine, pathsOf, thisMachine } from './machine.ts'
import { type Attempt, badSetting, failureReason, type NoBrowser, noBrowser } from './no-browser.ts'
import { systemBrowsers } from './system-browsers.ts'

/** A browser that has started. The caller closes it. */
export type BrowserFound = {
  readonly kind: 'found'
  readonly browser: Browser
  /** Product and path, for the build report. */
  readonly name: string
  /** As the browser gives it, such as `Chrome/156.0.1.2`. */
  readonly version: string
}

/**
 * Browsers in the order in which they are tried when no setting names one: first the one of a fixed
 * version, with which the same input gives the same pages on every machine, and which prints twice
 * as fast as a full browser.
 */
const defaultCandidates = (machine: Machine): Candidate[] => [
  bundledBrowser(machine),
  ...systemBrowsers(machine),
]

const notThere = (): Promise<Browser> => Promise.reject(new Error('ENOENT: there is no such file'))

/** Whether an executable is a headless shell, by its name. */
export const isShell = (executable: string, machine: Pick<Machine, 'platform'>): boolean =>
  /headless[-_]shell/.test(pathsOf(machine).basename(executable))

const settingCandidate = (executable: string, machine: Machine): Candidate => ({
  name: executable,
  start: () =>
    (existsSync(executable) ? launchBrowser : notThere)({
      executable,
      shell: isShell(executable, machine),
      machine,
    }),
})

const tryCandidate = async ({ name, start }: Candidate): Promise<BrowserFound | Attempt> => {
  try {
    const browser = await start()
    return { kind: 'found', browser, name, version: await browser.version() }
  } catch (error) {
    return { name, reason: failureReason(error) }
  }
}

/**
 * Finds a browser that prints and starts it. OVALKEEP_BROWSER, when set, is the only one tried;
 * else the candidates in turn, until one starts.
 * @param env Environment variables: OVALKEEP_BROWSER, PATH, HOME, XDG_CACHE_HOME, CI and what the
 * browser needs itself.
 */
export const findBrowser = async (
  env: Environment,
  candidates: readonly Candidate[] = defaultCandidates(thisMachine(env)),
): Promise<BrowserFound | NoBrowser> => {
  const setting = env['OVALKEEP_BROWSER']
  const attempts: Attempt[] = []
  for (const candidate of setting ? [settingCandidate(setting, thisMachine(env))] : candidates) {
    const result = await tryCandidate(candidate)
    if ('kind' in result) return result
    attempts.push(result)
  }
  const [first] = attempts
  return setting && first ? badSetting(first) : noBrowser(attempts)
}
