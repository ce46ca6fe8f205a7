import { readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadWorker } from '../../src/cli/load/load-scripts.ts'
import { workerFile } from '../../src/render/site/kept-site.ts'
import { sha256 } from '../../src/write/build-record.ts'
import { folders } from '../support/demo.ts'
import { loopbackBrowser } from '../support/loopback-browser.ts'
import { siteFolder } from '../support/site-folder.ts'
import { siteServer } from '../support/site-server.ts'

let browser: Awaited<ReturnType<typeof loopbackBrowser>>
let site: Awaited<ReturnType<typeof siteFolder>>
let server: Awaited<ReturnType<typeof siteServer>>
let base: string
let asked: string[]
/** Files that the server gives up. */
let gone: Set<string>

beforeAll(async () => {
  browser = await loopbackBrowser()
  site = await siteFolder('brambleford')
  server = await siteServer(site.folder)
  ;({ base, asked, gone } = server)
})

afterAll(async () => {
  server.close()
  await browser.close()
  await site.remove()
})

const line = 'document.querySelector(".saved")?.textContent ?? ""'

/** Another revision of the site: this page says something else. */
async function revise(page: string, said: string): Promise<void> {
  const file = path.join(site.folder, page)
  await writeFile(file, (await readFile(file, 'utf8')).replace('</main>', `<p>${said}</p></main>`))
  const old = await readFile(path.join(site.folder, 'worker.js'), 'utf8')
  const { files } = JSON.parse(/^var keptSite=(.*);$/m.exec(old)?.[1] ?? '{}') as {
    files: Record<string, string>
  }
  const all = await Promise.all(
    Object.keys(files).map(async (name) => ({
      path: name,
      data: await readFile(path.join(site.folder, name)),
    })),
  )
  const worker = workerFile(await loadWorker(folders), all, [], sha256)
  await writeFile(path.join(site.folder, worker.path), worker.data)
}

describe('a site that a phone keeps', () => {
  it('says so, and opens every kind of page without network', async () => {
    const page = await browser.newPage()
    await page.goto(`${base}/index.html`)
    await page.waitForFunction(`(${line}).startsWith("Saved on this phone: revision")`)
    await page.setOfflineMode(true)
    asked.length = 0
    for (const name of ['index', 'procedures/seal', 'worksheets/area', 'search', 'emergency']) {
      await page.goto(`${base}/${name}.html?from=phone#text`)
      expect(await page.evaluate('document.querySelector("main h1")?.textContent')).toBeTruthy()
      expect(
        await page.evaluate('[...document.fonts].every((f) => f.status !== "error")'),
        name,
      ).toBe(true)
    }
    expect(asked).toEqual([])
    await page.goto(`${base}/`)
    expect(await page.evaluate('document.querySelector("main h1")?.textContent')).toBeTruthy()
    await page.close()
  })

  it('is replaced whole when somebody asks for the newer revision', async () => {
    const page = await browser.newPage()
    await page.goto(`${base}/terms.html`)
    await page.waitForFunction(`(${line}) !== ""`)
    await revise('terms.html', 'said in the second revision')
    asked.length = 0
    await page.evaluate('navigator.serviceWorker.getRegistration().then((r) => r.update())')
    await page.waitForFunction(`(${line}).includes("A newer revision")`)
    // Only what has changed is carried once more.
    expect(asked.sort()).toEqual(['/terms.html', '/worker.js'])
    await page.reload()
    expect(await page.evaluate('document.body.textContent')).not.toContain('second revision')
    await page.waitForFunction('document.querySelector(".saved button") !== null')
    await Promise.all([page.waitForNavigation(), page.click('.saved button')])
    expect(await page.evaluate('document.body.textContent')).toContain('second revision')
    await page.close()
  })

  it('stays as it was when a newer revision cannot be had whole', async () => {
    const page = await browser.newPage()
    await page.goto(`${base}/terms.html`)
    await revise('learn.html', 'said in the third revision')
    await revise('terms.html', 'said in the third revision')
    gone.add('/learn.html')
    await page
      .evaluate('navigator.serviceWorker.getRegistration().then((r) => r.update())')
      .catch(() => undefined)
    await page.waitForFunction(
      'navigator.serviceWorker.getRegistration().then((r) => !r.installing && !r.waiting)',
    )
    await page.reload()
    const text = await page.evaluate('document.body.textContent')
    expect(text).toContain('second revision')
    expect(text).not.toContain('third revision')
    expect(await page.evaluate('caches.keys().then((names) => names.length)')).toBe(1)
    await page.close()
  })
})
