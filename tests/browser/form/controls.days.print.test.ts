import { afterAll, beforeAll, expect, it } from 'vitest'
import { formPage } from '../../support/form-page.ts'
import { loopbackBrowser } from '../../support/loopback-browser.ts'

let browser: Awaited<ReturnType<typeof loopbackBrowser>>
let fresh: Awaited<ReturnType<typeof formPage>>

beforeAll(async () => {
  browser = await loopbackBrowser(['--lang=en-US'])
  fresh = await formPage({})
})

afterAll(async () => {
  await browser.close()
  await fresh.remove()
})

it('takes a day that is typed by keys, and leads on from it', async () => {
  const page = await browser.newPage()
  await page.goto(`${fresh.address}#race-days`)
  const draft = (): Promise<unknown> => page.evaluate('localStorage.getItem("draft") ?? ""')
  await page.locator('main .add').click()
  await page.locator('[data-at="race-days.0.date"] input').click({ offset: { x: 20, y: 20 } })
  await page.keyboard.type('0813202', { delay: 10 })
  expect(await draft()).not.toContain('race-days')
  await page.keyboard.type('7')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Tab')
  await page.waitForFunction(
    'document.activeElement.closest("[data-at]")?.dataset.at === "race-days.0.first-post"',
  )
  expect(await draft()).toContain('- { date: 2027-08-13 }')
  // A year of two digits is one of this century.
  await page.locator('[data-at="race-days.0.date"] input').click({ offset: { x: 20, y: 20 } })
  await page.keyboard.type('081427', { delay: 10 })
  await page.keyboard.press('Tab')
  await page.keyboard.press('Tab')
  await page.waitForFunction('localStorage.getItem("draft").includes("2027-08-14")')
})
