import { describe, expect, it } from 'vitest'
import type { Candidate } from '../../../src/print/browser/candidate.ts'
import { findBrowser, isShell } from '../../../src/print/browser/find-browser.ts'

const failing = (name: string, reason: string): Candidate => ({
  name,
  start: () => Promise.reject(new Error(reason)),
})

type Started = Awaited<ReturnType<Candidate['start']>>

const running = (name: string): Candidate => ({
  name,
  start: async () => ({ version: async () => 'Chrome/147.0.0.0' }) as unknown as Started,
})

describe('the search for a browser', () => {
  it('takes the first that starts', async () => {
    const found = await findBrowser({}, [
      failing('one', 'ENOENT'),
      running('two'),
      running('three'),
    ])
    expect(found).toMatchObject({ kind: 'found', name: 'two', version: 'Chrome/147.0.0.0' })
  })

  it('says what was tried and what to install where none starts', async () => {
    const found = await findBrowser({}, [
      failing('one', 'log line\nspawn /x ENOENT'),
      failing('two', 'too old: version 131 or newer is needed'),
    ])
    expect(found.kind).toBe('no-browser')
    if (found.kind !== 'no-browser') return
    expect(found.message).toContain('one: spawn /x ENOENT')
    expect(found.message).toContain('two: too old')
    expect(found.message).toContain('apt-get install chromium')
  })

  it('tries the one that is set and no other, and says so when it does not work', async () => {
    const found = await findBrowser({ OVALKEEP_BROWSER: '/nowhere/chrome' }, [running('two')])
    expect(found.kind).toBe('no-browser')
    if (found.kind !== 'no-browser') return
    expect(found.message).toContain('OVALKEEP_BROWSER names a browser that does not work')
    expect(found.attempts.map((a) => a.name)).toEqual(['/nowhere/chrome'])
  })

  it('knows a headless shell by its name alone', () => {
    const windows = { platform: 'win32' } as const
    const linux = { platform: 'linux' } as const
    expect(isShell('C:\\browsers\\chrome-headless-shell.exe', windows)).toBe(true)
    expect(isShell('C:\\headless-shell\\chrome.exe', windows)).toBe(false)
    expect(isShell('/opt/headless_shell', linux)).toBe(true)
    expect(isShell('/opt/headless-shell/chrome', linux)).toBe(false)
  })
})
