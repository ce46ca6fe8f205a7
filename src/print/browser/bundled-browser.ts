import type { Browser } from 'puppeteer'
import type { Candidate } from './candidate.ts'
import {
  chromiumPackage,
  executableIn,
  fontEnvironment,
  libraryEnvironment,
  runsOn,
} from './chromium-package.ts'
import { launchBrowser } from './launch-browser.ts'
import type { Machine } from './machine.ts'
import { unpackBundled } from './unpack-bundled.ts'

const lacksLibraries = (error: unknown): boolean =>
  String(error).includes('error while loading shared libraries')

async function start(machine: Machine): Promise<Browser> {
  if (!runsOn(machine)) throw new Error('it runs on Linux x64 only')
  const folder = await unpackBundled(machine)
  const executable = executableIn(folder)
  const env = { ...machine.env, ...fontEnvironment(folder) }
  try {
    return await launchBrowser({ executable, shell: true, machine: { ...machine, env } })
  } catch (error) {
    if (!lacksLibraries(error)) throw error
    const withOwn = { ...machine, env: { ...env, ...libraryEnvironment(folder) } }
    return launchBrowser({ executable, shell: true, machine: withOwn })
  }
}

/** The browser that comes as an optional npm package: for build machines that have no other. */
export const bundledBrowser = (machine: Machine): Candidate => ({
  name: `the npm package ${chromiumPackage}`,
  start: () => start(machine),
})
