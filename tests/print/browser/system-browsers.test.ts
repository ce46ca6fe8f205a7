import { describe, expect, it } from 'vitest'
import { browserPlaces, systemBrowsers } from '../../../src/print/browser/system-browsers.ts'
import { machines } from '../../support/machines.ts'

describe('places of browsers', () => {
  it('on Linux are the PATH, where packages put programs, and the makers’ own folders', () => {
    const places = browserPlaces(machines.linux)
    expect(places[0]).toBe('/usr/bin/google-chrome')
    expect(places).toContain('/home/pat/bin/chromium')
    expect(places).toContain('/snap/bin/chromium')
    expect(places).toContain('/opt/microsoft/msedge/msedge')
    expect(places.every((p) => p.startsWith('/'))).toBe(true)
    expect(new Set(places).size).toBe(places.length)
  })

  it('on macOS are the two folders of applications before the PATH', () => {
    const places = browserPlaces(machines.mac)
    expect(places[0]).toBe('/Applications/Google Chrome.app/Contents/MacOS/Google Chrome')
    expect(places).toContain('/Users/pat/Applications/Chromium.app/Contents/MacOS/Chromium')
    expect(places).toContain('/opt/homebrew/bin/chromium')
  })

  it('on Windows are the folders of programs, of all users and of one', () => {
    expect(browserPlaces(machines.windows)).toEqual([
      'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
      'C:\\Program Files\\Chromium\\Application\\chrome.exe',
      'C:\\Program Files\\Microsoft\\Edge\\Application\\msedge.exe',
      'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
      'C:\\Program Files (x86)\\Chromium\\Application\\chrome.exe',
      'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
      'C:\\Users\\Pat\\AppData\\Local\\Google\\Chrome\\Application\\chrome.exe',
      'C:\\Users\\Pat\\AppData\\Local\\Chromium\\Application\\chrome.exe',
      'C:\\Users\\Pat\\AppData\\Local\\Microsoft\\Edge\\Application\\msedge.exe',
    ])
  })

  it('on Windows leave out folders that nobody has named', () => {
    expect(browserPlaces({ ...machines.windows, env: {} })).toEqual([])
  })
})

describe('installed browsers', () => {
  it('are those that are there, Chrome before the others', () => {
    const there = ['/usr/bin/chromium', '/usr/bin/google-chrome']
    const found = systemBrowsers(machines.linux, (file) => there.includes(file))
    expect(found.map((c) => c.name)).toEqual(['/usr/bin/google-chrome', '/usr/bin/chromium'])
  })

  it.each(Object.entries(machines))(
    'are said to be missing on %s where there are none',
    async (_, machine) => {
      const found = systemBrowsers(machine, () => false)
      expect(found).toHaveLength(1)
      await expect(found[0]?.start()).rejects.toThrow('none on the PATH or in the usual places')
    },
  )
})
