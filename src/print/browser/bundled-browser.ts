import { existsSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser } from 'puppeteer'
import type { Candidate, Environment } from './candidate.ts'
import { launchBrowser } from './launch-browser.ts'
import { unpackBundled } from './unpack-bundled.ts'

const lacksLibraries = (error: unknown): boolean =>
  String(error).includes('error while loading shared libraries')

const start = async (env: Environment): Promise<Browser> => {
  if (process.platform !== 'linux' || process.arch !== 'x64')
    throw new Error('it runs on Linux x64 only')
  const folder = await unpackBundled(env)
  const fonts = existsSync('/etc/fonts/fonts.conf')
    ? {}
    : { FONTCONFIG_PATH: join(folder, 'fonts') }
  const launch = { executable: join(folder, 'chromium'), shell: true, env: { ...env, ...fonts } }
  try {
    return await launchBrowser(launch)
  } catch (error) {
    if (!lacksLibraries(error)) throw error
    const libraries = { LD_LIBRARY_PATH: join(folder, 'al2023', 'lib') }
    return launchBrowser({ ...launch, env: { ...launch.env, ...libraries } })
  }
}

/** The browser that comes as an optional npm package: for build machines that have no other. */
export const bundledBrowser = (env: Environment): Candidate => ({
  name: 'the npm package @sparticuz/chromium',
  start: () => start(env),
})
