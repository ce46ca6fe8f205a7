import type { Machine } from '../../src/print/browser/machine.ts'

/** A computer of each kind with a user of no special rights. */
export const machines = {
  linux: {
    platform: 'linux',
    arch: 'x64',
    env: { PATH: '/usr/bin:/home/pat/bin' },
    home: '/home/pat',
    temporary: '/tmp',
    user: 1000,
  },
  mac: {
    platform: 'darwin',
    arch: 'arm64',
    env: { PATH: '/usr/bin:/opt/homebrew/bin' },
    home: '/Users/pat',
    temporary: '/var/folders/x1/T',
    user: 501,
  },
  windows: {
    platform: 'win32',
    arch: 'x64',
    env: {
      PATH: 'C:\\Windows;C:\\Windows\\System32',
      ProgramFiles: 'C:\\Program Files',
      'ProgramFiles(x86)': 'C:\\Program Files (x86)',
      LOCALAPPDATA: 'C:\\Users\\Pat\\AppData\\Local',
    },
    home: 'C:\\Users\\Pat',
    temporary: 'C:\\Users\\Pat\\AppData\\Local\\Temp',
    user: undefined,
  },
} as const satisfies Record<string, Machine>
