import { writeFile } from 'node:fs/promises'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadMakings } from '../../../src/cli/site-files.ts'
import { oneFileOf } from '../../../src/render/site/site-files.ts'
import { demoManual, folders } from '../../support/demo.ts'
import { firefox, openFirefox } from '../../support/firefox.ts'
import { siteFolder } from '../../support/site-folder.ts'

if (firefox === undefined) console.log('No Firefox is installed: the site is not tried in it.')

describe.skipIf(firefox === undefined)('the site in Firefox, from disk', () => {
  let browser: Awaited<ReturnType<typeof openFirefox>>
  let site: Awaited<ReturnType<typeof siteFolder>>

  beforeAll(async () => {
    site = await siteFolder('larkmoor')
    const { manual, words } = await demoManual('larkmoor')
    const { path: name, data } = await oneFileOf(manual, words, await loadMakings(folders))
    await writeFile(path.join(site.folder, name), data)
    browser = await openFirefox()
  }, 120_000)

  afterAll(async () => {
    await browser.close()
    await site.remove()
  })

  const open = async (name: string, place = '') => {
    const page = await browser.newPage()
    const said: string[] = []
    page.on('pageerror', (error) => said.push(String(error)))
    await page.goto(`${pathToFileURL(path.join(site.folder, name)).href}${place}`)
    return { page, said }
  }

  it('finds by the crew’s words', async () => {
    const { page, said } = await open('search.html')
    await page.type('main #find', 'cuppy')
    await page.waitForSelector('.hits a[href="procedures/cuppy.html"]')
    expect(said).toEqual([])
    await page.close()
  }, 60_000)

  it('narrows what is seen', async () => {
    const { page, said } = await open('symptoms.html')
    await page.click('.answers button')
    expect(await page.$eval('.fits', (line) => line.textContent)).toMatch(/^\d+ of \d+ fit$/)
    expect(said).toEqual([])
    await page.close()
  }, 60_000)

  it('shows one page of the one file at a time', async () => {
    const { page, said } = await open('manual.html', '#procedures.seal')
    const shown = await page.$$eval('.leaf', (leaves) =>
      leaves.filter((leaf) => leaf.getBoundingClientRect().height > 0).map(({ id }) => id),
    )
    expect(shown).toEqual(['procedures.seal'])
    expect(said).toEqual([])
    await page.close()
  }, 60_000)
})
