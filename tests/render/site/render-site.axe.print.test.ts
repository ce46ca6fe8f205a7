import { readdir } from 'node:fs/promises'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type BrowserFound, findBrowser } from '../../../src/print/browser/find-browser.ts'
import {
  dayAndNight,
  faultsOfPage,
  fewLooks,
  type Look,
  looks,
  type Tab,
} from '../../support/faults-of-page.ts'
import { siteFolder } from '../../support/site-folder.ts'

let found: BrowserFound

beforeAll(async () => {
  const browser = await findBrowser(process.env)
  if (browser.kind !== 'found') throw new Error(browser.message)
  found = browser
})

afterAll(() => found.browser.close())

/** Of pages that are made alike one stands for all. */
const oneOfEach =
  /^(?!worksheets|procedures\/|plans\/)|^(?:worksheets\/area|procedures\/seal|plans\/(?:race-days|training))\.html$/

async function openTab(runsScripts: boolean, said: (what: string) => void): Promise<Tab> {
  const tab = await found.browser.newPage()
  tab.on('console', (message) => said(message.text()))
  tab.on('pageerror', (error) => said(String(error)))
  if (!runsScripts) {
    await tab.setRequestInterception(true)
    tab.on('request', (asked) =>
      asked.resourceType() === 'script' ? asked.abort() : asked.continue(),
    )
  }
  return tab
}

/** How the pages of a site are looked at. */
type Looking = {
  readonly among: (page: string) => readonly Look[]
  readonly runsScripts: boolean
}

/** Looks at pages of a site, several at once. @returns every fault with its page. */
async function faultsOf(
  folder: string,
  pages: readonly string[],
  { among, runsScripts }: Looking,
): Promise<readonly string[]> {
  const left = [...pages]
  const faults: string[] = []
  const work = async (): Promise<void> => {
    const said: string[] = []
    const tab = await openTab(runsScripts, (what) => said.push(what))
    for (let name = left.shift(); name !== undefined; name = left.shift()) {
      await tab.goto(pathToFileURL(path.join(folder, name)).href)
      const of = await faultsOfPage(tab, among(name))
      // A script that is kept away makes the browser complain.
      faults.push(...[...of, ...(runsScripts ? said : [])].map((fault) => `${name} ${fault}`))
      said.length = 0
    }
    await tab.close()
  }
  await Promise.all([work(), work()])
  return faults
}

const pagesIn = async (folder: string): Promise<readonly string[]> =>
  (await readdir(folder, { recursive: true }))
    .map((name) => name.replaceAll(path.sep, '/'))
    .filter((name) => name.endsWith('.html'))
    .sort()

describe('the site of larkmoor, from disk', () => {
  let site: Awaited<ReturnType<typeof siteFolder>>
  beforeAll(async () => {
    site = await siteFolder('larkmoor')
  })
  afterAll(() => site.remove())

  // What a look on a desk by night adds to one on a phone by day are colors, which pages that are made
  // alike have alike.
  const amongAll = (name: string): readonly Look[] => (oneOfEach.test(name) ? looks : dayAndNight)

  it.each([
    { of: 'every page', scripts: true, among: amongAll, which: /./, least: 150 },
    { of: 'one of each kind', scripts: false, among: () => fewLooks, which: oneOfEach, least: 15 },
  ])(
    'has no fault that a program finds: $of, with scripts: $scripts',
    async ({ which, least, among, scripts }) => {
      const pages = (await pagesIn(site.folder)).filter((name) => which.test(name))
      expect(pages.length).toBeGreaterThan(least)
      expect(await faultsOf(site.folder, pages, { among, runsScripts: scripts })).toEqual([])
    },
  )
})

describe('pages of the site of brambleford, from disk', () => {
  it('have no fault that a program finds', async () => {
    const site = await siteFolder('brambleford')
    const pages = (await pagesIn(site.folder)).filter((name) => oneOfEach.test(name))
    expect(pages.length).toBeGreaterThan(15)
    expect(
      await faultsOf(site.folder, pages, { among: () => dayAndNight, runsScripts: true }),
    ).toEqual([])
    await site.remove()
  })
})
