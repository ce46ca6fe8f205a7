import { gzipSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { loadScripts } from '../../src/cli/load/load-scripts.ts'
import { siteContext } from '../../src/render/site/render-site.ts'
import { dayScript } from '../../src/render/site/today-script.ts'
import { demoManual, demos, folders } from '../support/demo.ts'

/** As it is sent. */
const bytes = (text: string): number => gzipSync(text, { level: 9 }).length

/** A kilobyte of what a phone has to fetch. */
const kB = 1000

describe('what a phone fetches', () => {
  it('to work with numbers of the day is at most 55 kB of script, all calculations included', async () => {
    const { today } = await loadScripts(folders)
    expect(bytes(today)).toBeLessThanOrEqual(55 * kB)
  })

  it.each(demos)('of the facts and words of %s is little beside', async (id) => {
    const { manual, words } = await demoManual(id)
    expect(bytes(dayScript(siteContext(manual, words)))).toBeLessThanOrEqual(10.5 * kB)
  })

  it('for every page is at most 3 kB of script', async () => {
    const { page } = await loadScripts(folders)
    expect(bytes(page)).toBeLessThanOrEqual(3 * kB)
  })

  it('holds nothing of the table of facts and the words of worksheets but what is worked with', async () => {
    const { today } = await loadScripts(folders)
    expect(today).not.toContain('Read it from the surveyor')
    expect(today).not.toContain('temml')
    // Phones of some years ago cannot read a pattern that looks behind.
    expect(today).not.toMatch(/\(\?<[=!]/)
  })
})
