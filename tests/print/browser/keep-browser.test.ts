import { describe, expect, it } from 'vitest'
import type { BrowserFound } from '../../../src/print/browser/find-browser.ts'
import { keepBrowser } from '../../../src/print/browser/keep-browser.ts'

/** Browsers that do nothing but be there or not, and how many were started. */
function browsers() {
  const started: { connected: boolean }[] = []
  const find = async (): Promise<BrowserFound> => {
    const browser = {
      connected: true,
      process: () => null,
      close: async () => {
        browser.connected = false
      },
    }
    started.push(browser)
    const name = `browser ${started.length}`
    return { kind: 'found', browser: browser as never, name, version: 'Chrome/200.0' }
  }
  return { started, find }
}

const ended = (found: BrowserFound): never => {
  Object.assign(found.browser, { connected: false })
  throw new Error('whatever it says then')
}

describe('one browser for many', () => {
  it('is started once, and closed at the end', async () => {
    const { started, find } = browsers()
    const kept = keepBrowser(find)
    kept.warm()
    const names = await Promise.all([1, 2, 3].map(() => kept.use(async ({ name }) => name)))
    expect(names.map((n) => n.kind === 'done' && n.value)).toEqual(Array(3).fill('browser 1'))
    await kept.close()
    expect(started).toEqual([expect.objectContaining({ connected: false })])
  })

  it('does one thing at a time', async () => {
    const kept = keepBrowser(browsers().find)
    let [now, most] = [0, 0]
    const work = async (): Promise<void> => {
      most = Math.max(most, ++now)
      await new Promise((done) => setTimeout(done, 2))
      now--
    }
    await Promise.all([kept.use(work), kept.use(work), kept.use(work)])
    expect(most).toBe(1)
  })

  it('is replaced where it ends in the middle, and the work is done once more', async () => {
    const { started, find } = browsers()
    const kept = keepBrowser(find)
    const used = await kept.use(async (found) =>
      found.name === 'browser 1' ? ended(found) : found.name,
    )
    expect(used).toMatchObject({ kind: 'done', value: 'browser 2' })
    // Whoever comes next takes the one that is there.
    expect(await kept.use(async ({ name }) => name)).toMatchObject({ value: 'browser 2' })
    expect(started).toHaveLength(2)
  })

  it('that fails twice is told of, and the next work gets a fresh one', async () => {
    const { started, find } = browsers()
    const kept = keepBrowser(find)
    const used = await kept.use(async (found) => ended(found))
    expect(used).toMatchObject({
      kind: 'failed',
      message: expect.stringMatching(/^The browser \(browser 2\) ended.*2 times/),
    })
    expect(await kept.use(async ({ name }) => name)).toMatchObject({ value: 'browser 3' })
    expect(started).toHaveLength(3)
  })

  it('is replaced where it has ended since it was last used', async () => {
    const { started, find } = browsers()
    const kept = keepBrowser(find)
    await kept.use(async () => undefined)
    Object.assign(started[0] ?? {}, { connected: false })
    expect(await kept.use(async ({ name }) => name)).toMatchObject({ value: 'browser 2' })
  })

  it('is not blamed for a fault of the work, which is not tried again', async () => {
    const { started, find } = browsers()
    const kept = keepBrowser(find)
    let times = 0
    const work = async (): Promise<never> => {
      times++
      throw new Error('the page is too wide')
    }
    await expect(kept.use(work)).rejects.toThrow('too wide')
    expect([times, started.length]).toEqual([1, 1])
    expect(await kept.use(async () => 'next')).toMatchObject({ value: 'next' })
  })

  it('that is not there is looked for once', async () => {
    let times = 0
    const none = { kind: 'no-browser', message: 'none', attempts: [] } as const
    const kept = keepBrowser(async () => {
      times++
      return none
    })
    expect(await kept.isThere()).toBe(false)
    expect(await kept.use(async () => 1)).toBe(none)
    expect(await kept.use(async () => 1)).toBe(none)
    expect(times).toBe(1)
    await kept.close()
  })
})
