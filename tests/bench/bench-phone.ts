import { readFile, rm } from 'node:fs/promises'
import path from 'node:path'
import { gzipSync } from 'node:zlib'
import { parse } from 'yaml'
import { build } from '../../src/cli/build.ts'
import { processIo } from '../../src/cli/io.ts'
import { date, demoFolder, demoManual, folders } from '../support/demo.ts'
import { loopbackBrowser } from '../support/loopback-browser.ts'
import { siteFiles } from '../support/site-files.ts'
import { siteFolder } from '../support/site-folder.ts'
import { siteServer } from '../support/site-server.ts'
import { siteWeights } from '../support/site-weights.ts'

// What the site weighs on its way to a phone (gzip), and how fast a phone six times as slow as this
// machine finds and opens it. Aims stand beside each line.

const slowdown = 6

const line = (name: string, is: string, aim: string): void =>
  console.log(`${name.padEnd(48)} ${is} (aim ${aim})`)

const { manual, words } = await demoManual('larkmoor')
const files = await siteFiles(manual, words, folders, new Map())
const weights = siteWeights(files)
line('script of every page', `${weights.everyPage} kB`, '3')
line("today's numbers with the core", `${weights.today} kB`, '60')
line('search with its index', `${weights.search} kB`, '70')
line('home with fonts', `${weights.home} kB`, '80')
line('font of formulas', `${weights.formulas} kB`, '40')
line('everything that a phone keeps', `${weights.kept} kB`, '1000')

const into = path.join(folders.project, 'node_modules', '.cache', 'bench-phone')
const quiet = { ...processIo(), env: { ...process.env, OVALKEEP_BROWSER: path.join(into, 'none') } }
await build([demoFolder('larkmoor')], { date, into, quiet: true }, quiet)
const one = await readFile(path.join(into, 'larkmoor', 'manual.html'))
await rm(into, { recursive: true, force: true })
line(
  'manual.html',
  `${(one.length / 1e6).toFixed(2)} MB, packed ${(gzipSync(one).length / 1e6).toFixed(2)} MB`,
  '3 MB',
)

const browser = await loopbackBrowser()
const site = await siteFolder('larkmoor')
const server = await siteServer(site.folder)
const page = await browser.newPage()
await page.setViewport({ width: 390, height: 844, hasTouch: true, isMobile: true })

const middle = (all: readonly number[]): number =>
  [...all].sort((a, b) => a - b)[all.length >> 1] ?? 0
const told = (all: readonly number[]): string =>
  `median ${Math.round(middle(all))} ms, worst ${Math.round(Math.max(...all))} ms`

// Every query of the list is typed whole: from the last letter until the results stand in the page.
const queries = Object.values(
  parse(
    await readFile(
      path.join(folders.project, 'tests', 'fixtures', 'search', 'queries.yaml'),
      'utf8',
    ),
  ) as {
    [list: string]: { find: string }[]
  },
).flatMap((list) => list.map(({ find }) => find))
await page.emulateCPUThrottling(slowdown)
await page.goto(`${server.base}/search.html`)
// Somebody has to find the keys first.
await new Promise((done) => setTimeout(done, 1000))
const took = (await page.evaluate(`{
  const input = document.querySelector('form.find input');
  ${JSON.stringify(queries)}.map((query) => {
    input.value = query
    const began = performance.now()
    input.dispatchEvent(new Event('input', { bubbles: true }))
    document.querySelector('.hits').getBoundingClientRect()
    return performance.now() - began
  })
}`)) as readonly number[]
line(`${took.length - 1} searches at ${slowdown} × slowed CPU`, told(took.slice(1)), '50')
line('the first search', `${Math.round(took[0] ?? 0)} ms`, '50')

// From the phone's store, with no network, until the page can be read and its scripts have run.
await page.emulateCPUThrottling(1)
await page.goto(`${server.base}/index.html`)
await page.waitForFunction(
  'document.querySelector(".saved")?.textContent.startsWith("Saved on this phone")',
)
await page.setOfflineMode(true)
await page.emulateCPUThrottling(slowdown)
const opened: number[] = []
for (let round = 0; round < 7; round++) {
  await page.goto('about:blank')
  await page.goto(`${server.base}/index.html`)
  opened.push(
    Number(
      await page.evaluate(
        'Math.max(performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? 0, performance.getEntriesByType("navigation")[0].domContentLoadedEventEnd)',
      ),
    ),
  )
}
line('start page from the store, without network', told(opened), '1000')

await browser.close()
server.close()
await site.remove()
