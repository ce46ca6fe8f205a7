import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { smallTargets } from '../support/accessible.ts'
import { faultsOfPage, looks, type Tab } from '../support/faults-of-page.ts'
import { loopbackBrowser } from '../support/loopback-browser.ts'
import { siteFolder } from '../support/site-folder.ts'

let browser: Awaited<ReturnType<typeof loopbackBrowser>>
let site: Awaited<ReturnType<typeof siteFolder>>
let page: Tab

beforeAll(async () => {
  browser = await loopbackBrowser()
  site = await siteFolder('larkmoor')
  page = await browser.newPage()
  await page.setViewport({ width: 390, height: 844 })
})

afterAll(async () => {
  await browser.close()
  await site.remove()
})

const open = () => page.goto(pathToFileURL(path.join(site.folder, 'learn.html')).href)
const text = async (selector: string): Promise<string> =>
  String(
    await page.evaluate(`document.querySelector(${JSON.stringify(selector)})?.textContent ?? ''`),
  )
const focused = () => page.evaluate('document.activeElement?.textContent')
const isShown = (selector: string) =>
  page.evaluate(`document.querySelector(${JSON.stringify(selector)}).checkVisibility()`)

/** Answers the question that is shown, by key; `right` is where the right one stands. */
async function answer(isRight: boolean): Promise<void> {
  const ask = await text('.asked legend')
  const found = (await page.evaluate(`(() => {
    const box = [...document.querySelectorAll('.question')].find((q) => q.querySelector('p').textContent === ${JSON.stringify(ask)})
    const right = Number(box.dataset.right) - 1
    const places = [...document.querySelectorAll('.options input')].map((i) => Number(i.value))
    return places.findIndex((place) => (place === right) === ${isRight})
  })()`)) as number
  await page.focus(`#choice-${found}`)
  await page.keyboard.press('Space')
  await page.keyboard.press('Enter')
}

describe('lessons of a role, by keyboard', () => {
  it('are taken one by one; what was wrong comes back; the result bears the name that is typed', async () => {
    await open()
    await page.evaluate('localStorage.clear()')
    await page.focus('#course-guides button')
    await page.keyboard.press('Enter')
    expect(await focused()).toBe(await text('#study-title'))
    expect(await isShown('.courses')).toBe(false)
    let wrongOnes = 0
    for (let i = 0; i < 60 && !(await isShown('.result')); i++) {
      if (await isShown('.asked')) {
        const isWrong = wrongOnes < 2
        if (isWrong) wrongOnes += 1
        await answer(!isWrong)
        expect(await text('.verdict')).toMatch(
          isWrong ? /^Not this one\. .*comes back/ : /^Right\. ./,
        )
      } else await page.focus('.next')
      // The focus stands on what goes on.
      await page.keyboard.press('Enter')
    }
    const [right = 0, all = 0] = ((await text('.first')).match(/\d+/g) ?? []).map(Number)
    expect(all).toBeGreaterThan(2)
    expect(right).toBe(all - 2)
    await page.type('#learner', 'Somebody')
    expect(await faultsOfPage(page, looks)).toEqual([])
    await page.reload()
    expect(await page.evaluate('document.getElementById("learner").value')).toBe('')
    expect(await text('#course-guides button')).toBe('Begin')
  })

  it('go on where somebody stopped', async () => {
    await open()
    await page.locator('#course-walkers button').click()
    await page.locator('.next').click()
    await answer(true)
    await page.locator('.next').click()
    const place = await text('.where')
    await page.reload()
    expect(await text('#course-walkers button')).toBe('Go on where you stopped')
    await page.locator('#course-walkers button').click()
    expect(await text('.where')).toBe(place)
    await page.locator('.leave').click()
    expect(await isShown('.courses')).toBe(true)
    // Every lesson is back in its place.
    expect(await page.evaluate('document.querySelectorAll(".lessons > .lesson").length')).toBe(
      await page.evaluate('document.querySelectorAll(".lesson").length'),
    )
  })

  it('show the drawing that a question is about, and have no fault that a program finds', async () => {
    await open()
    await page.evaluate('localStorage.clear()')
    await page.reload()
    expect(await smallTargets(page, '.courses')).toEqual([])
    await page.locator('#course-walkers button').click()
    while ((await text('#study-title')) !== 'Read hoof prints') {
      if (await isShown('.asked')) await answer(true)
      await page.locator('.next').click()
    }
    expect(await isShown('.stage svg[aria-label^="Drawing"]')).toBe(true)
    await page.locator('.next').click()
    expect(await isShown('.stage .drawing')).toBe(true)
    expect(await smallTargets(page, '.study')).toEqual([])
    expect(await faultsOfPage(page, looks)).toEqual([])
  })

  it('stand there as text where no script runs', async () => {
    await page.setJavaScriptEnabled(false)
    await open()
    await page.setJavaScriptEnabled(true)
    expect(await isShown('.study')).toBe(false)
    expect(await isShown('.course a')).toBe(false)
    expect(await isShown('.course summary')).toBe(true)
    expect(await isShown('.course button')).toBe(false)
    expect(await isShown('.question summary')).toBe(true)
  })
})
