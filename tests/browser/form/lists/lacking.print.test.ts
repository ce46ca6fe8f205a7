import { afterAll, beforeAll, expect, it } from 'vitest'
import { formPage } from '../../../support/form-page.ts'
import { loopbackBrowser } from '../../../support/loopback-browser.ts'

const text = `name: Our County Fair
id: our-county-fair
units: us
race-days:
  - { date: 2027-08-03, first-post: after lunch, races: 10 }
  - { date: 2027-08-04, first-post: "1:00 PM" }
  - { date: 2027-08-05, first-post: "1:00 PM", races: 9 }
`

let browser: Awaited<ReturnType<typeof loopbackBrowser>>
let begun: Awaited<ReturnType<typeof formPage>>

beforeAll(async () => {
  browser = await loopbackBrowser()
  begun = await formPage({ 'facility.yaml': text })
})

afterAll(async () => {
  await browser.close()
  await begun.remove()
})

it('says of each entry in its line what it lacks, or what does not fit', async () => {
  const page = await browser.newPage()
  await page.goto(`${begun.address}#race-days`)
  const said = `JSON.stringify([...document.querySelectorAll('.entry-lacks')].map((e) => e.hidden ? '' : e.textContent))`
  const wanted = JSON.stringify(['Look again: first post', 'Still to say: races', ''])
  await page.waitForFunction(`${said} === ${JSON.stringify(wanted)}`, { timeout: 20_000 })
  expect(await page.evaluate(said)).toBe(wanted)
})
