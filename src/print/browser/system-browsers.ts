import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import type { Candidate, Environment } from './candidate.ts'
import { launchBrowser } from './launch-browser.ts'

const programs = [
  'google-chrome',
  'google-chrome-stable',
  'chromium',
  'chromium-browser',
  'microsoft-edge',
  'microsoft-edge-stable',
]

/** Where the makers' own packages put their programs on Linux. */
const linuxFiles = ['/opt/google/chrome/chrome', '/opt/microsoft/msedge/msedge']

const linuxPlaces = ['/usr/bin', '/usr/local/bin', '/snap/bin']

const macPlaces = [
  'Google Chrome.app/Contents/MacOS/Google Chrome',
  'Chromium.app/Contents/MacOS/Chromium',
  'Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
]

const windowsPlaces = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Chromium\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
]

const onPath = (env: Environment): string[] => {
  const folders = (env['PATH'] ?? '').split(delimiter).filter(Boolean)
  return [
    ...programs.flatMap((program) =>
      [...folders, ...linuxPlaces].map((folder) => join(folder, program)),
    ),
    ...linuxFiles,
  ]
}

const onMac = (env: Environment): string[] =>
  ['/Applications', join(env['HOME'] ?? '', 'Applications')].flatMap((folder) =>
    macPlaces.map((place) => join(folder, place)),
  )

const onWindows = (env: Environment): string[] =>
  [env['ProgramFiles'], env['ProgramFiles(x86)'], env['LOCALAPPDATA']]
    .filter((folder) => folder !== undefined)
    .flatMap((folder) => windowsPlaces.map((place) => join(folder, place)))

const places = (env: Environment): string[] => {
  if (process.platform === 'win32') return onWindows(env)
  return process.platform === 'darwin' ? [...onMac(env), ...onPath(env)] : onPath(env)
}

/** @returns the paths of the installed browsers that can print, Chrome first. */
const installed = (env: Environment): string[] =>
  [...new Set(places(env))].filter((path) => existsSync(path))

/** The browsers installed on this machine; one candidate that says so when there are none. */
export const systemBrowsers = (env: Environment): Candidate[] => {
  const found = installed(env).map((executable) => ({
    name: executable,
    start: () => launchBrowser({ executable, shell: false, env }),
  }))
  if (found.length > 0) return found
  const none = 'none on the PATH or in the usual places'
  return [
    { name: 'an installed Chrome, Chromium or Edge', start: () => Promise.reject(new Error(none)) },
  ]
}
