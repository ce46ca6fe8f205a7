import { execFileSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { formPage } from '../support/form-page.ts'
import { loopbackBrowser } from '../support/loopback-browser.ts'
import { siteServer } from '../support/site-server.ts'

type Browser = Awaited<ReturnType<typeof loopbackBrowser>>

/** A picture of a page, as it is looked at. */
type View = {
  readonly name: string
  /** Its address, after that of the site or the form. */
  readonly page: string
  readonly width: number
  readonly height: number
}

const views: readonly View[] = [{ name: 'today', page: 'today.html', width: 390, height: 760 }]

/** What the form shows in its pictures. */
const answers = `name: Our County Fair
id: our-county-fair
place: { town: Hollow Creek }
units: us
paper: letter
emergency: { number: "911", address: "12 Mill Road", gate: Gate A }
oval:
  lap: 2,640 ft
  straight: 600 ft
cushion: { material: stone-dust }
race-days:
  - { date: 2027-08-03, first-post: "1:00 PM", races: 10 }
`

const formViews: readonly View[] = [{ name: 'form', page: '#oval', width: 1300, height: 860 }]

/** Dots to an inch of printed pages. */
const dots = 110

/** Printed pages as pictures, by poppler's pdftoppm. */
function paper(file: string, page: number): Buffer {
  const out = path.join(tmpdir(), `guide-${process.pid}`)
  const from = ['-f', String(page), '-l', String(page), '-r', String(dots), '-singlefile', '-png']
  execFileSync('pdftoppm', [...from, file, out])
  return readFileSync(`${out}.png`)
}

const asUrl = (png: Uint8Array): string =>
  `data:image/png;base64,${Buffer.from(png).toString('base64')}`

/** Takes a picture of pages laid side by side. */
async function together(
  browser: Browser,
  pngs: readonly Uint8Array[],
  heights: readonly number[],
): Promise<Uint8Array> {
  const page = await browser.newPage()
  await page.setViewport({ width: 1400, height: 900 })
  const images = pngs.map(
    (png, i) =>
      `<img src="${asUrl(png)}" style="height:${heights[i]}px;box-shadow:0 2px 12px #0005">`,
  )
  await page.setContent(
    `<body style="margin:0"><div id="all" style="display:inline-flex;gap:24px;align-items:center;padding:28px;background:#d9d4c7">${images.join('')}</div>`,
  )
  await page.waitForNetworkIdle()
  const all = await page.$('#all')
  const png = await all?.screenshot({ type: 'png' })
  await page.close()
  if (!png) throw new Error('nothing to take a picture of')
  return png
}

async function lookedAt(browser: Browser, base: string, view: View): Promise<Uint8Array> {
  const page = await browser.newPage()
  await page.setViewport({ width: view.width, height: view.height, deviceScaleFactor: 1.5 })
  await page.goto(`${base}${view.page}`, { waitUntil: 'networkidle0' })
  const png = await page.screenshot({ type: 'png' })
  await page.close()
  return png
}

/**
 * Takes all pictures of the guide.
 * @param manual A printed manual.
 * @throws Error where it, a browser or pdftoppm is missing.
 */
export async function takePictures(manual: string, into: string): Promise<void> {
  const form = await formPage({ 'facility.yaml': answers })
  const browser = await loopbackBrowser()
  const server = await siteServer(path.join(manual, 'site'))
  try {
    const taken = new Map<string, Uint8Array>()
    for (const view of views) taken.set(view.name, await lookedAt(browser, `${server.base}/`, view))
    for (const view of formViews) taken.set(view.name, await lookedAt(browser, form.address, view))
    const sheet = paper(path.join(manual, 'sheets', 'seal.pdf'), 1)
    const phone = taken.get('today') ?? sheet
    taken.set('manual', await together(browser, [sheet, phone], [800, 620]))
    for (const [name, png] of taken) writeFileSync(path.join(into, `${name}.png`), png)
  } finally {
    server.close()
    await form.remove()
    await browser.close()
  }
}
