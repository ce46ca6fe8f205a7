import { existsSync } from 'node:fs'
import type { Candidate } from './candidate.ts'
import { launchBrowser } from './launch-browser.ts'
import { type Machine, pathsOf } from './machine.ts'

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

function onPath(machine: Machine): string[] {
  const { delimiter, join } = pathsOf(machine)
  const folders = (machine.env['PATH'] ?? '').split(delimiter).filter(Boolean)
  return [
    ...programs.flatMap((program) =>
      [...folders, ...linuxPlaces].map((folder) => join(folder, program)),
    ),
    ...linuxFiles,
  ]
}

function onMac(machine: Machine): string[] {
  const { join } = pathsOf(machine)
  return ['/Applications', join(machine.home, 'Applications')].flatMap((folder) =>
    macPlaces.map((place) => join(folder, place)),
  )
}

function onWindows(machine: Machine): string[] {
  const { env } = machine
  return [env['ProgramFiles'], env['ProgramFiles(x86)'], env['LOCALAPPDATA']]
    .filter((folder) => folder !== undefined)
    .flatMap((folder) => windowsPlaces.map((place) => pathsOf(machine).join(folder, place)))
}

/** Where browsers that can print may be installed on a machine, Chrome first. */
export function browserPlaces(machine: Machine): readonly string[] {
  const all: Partial<Record<NodeJS.Platform, readonly string[]>> = {
    win32: onWindows(machine),
    darwin: [...onMac(machine), ...onPath(machine)],
  }
  return [...new Set(all[machine.platform] ?? onPath(machine))]
}

/**
 * The browsers installed on a machine; one candidate that says so when there are none.
 * @param exists Whether there is such a file.
 */
export function systemBrowsers(
  machine: Machine,
  exists: (file: string) => boolean = existsSync,
): readonly Candidate[] {
  const found = browserPlaces(machine)
    .filter(exists)
    .map((executable) => ({
      name: executable,
      start: () => launchBrowser({ executable, shell: false, machine }),
    }))
  if (found.length > 0) return found
  const none = 'none on the PATH or in the usual places'
  return [
    { name: 'an installed Chrome, Chromium or Edge', start: () => Promise.reject(new Error(none)) },
  ]
}
