import { describe, expect, it } from 'vitest'
import { type FormTab, useForms } from '../../support/use-forms.ts'

const { open } = useForms()

const vet = '[data-first="veterinarian"]'
const [name, phone, box] = [
  '[data-at="veterinarian.name"] input',
  '[data-at="veterinarian.phone"] input',
  `${vet} .not-yet input`,
]
const shownIn = (page: FormTab, selector: string): Promise<string> =>
  page.$eval(selector, (input) => (input as unknown as { value: string }).value)
const isTicked = (page: FormTab): Promise<boolean> =>
  page.$eval(box, (input) => (input as unknown as { checked: boolean }).checked)
const textOf = (page: FormTab, selector: string): Promise<string> =>
  page.$eval(selector, (node) => node.textContent ?? '')
const draft = async (page: FormTab): Promise<string> =>
  String(await page.evaluate('localStorage.getItem("draft") ?? ""'))
async function type(page: FormTab, selector: string, text: string): Promise<void> {
  await page.locator(selector).fill(text)
  await page.keyboard.press('Tab')
}

describe('what nobody knows yet', () => {
  it('keeps half an answer in its box, out of the file, and gives it back', async () => {
    const { page } = await open('fresh', 'help')
    await type(page, name, 'Dr. B. Name')
    await page.locator(box).click()
    expect(await draft(page)).not.toContain('B. Name')
    expect(await shownIn(page, name)).toBe('Dr. B. Name')
    expect(await textOf(page, `${vet} .lack`)).toMatch(/left out.*Dr\. B\. Name/)
    await page.reload()
    await page.waitForSelector(name)
    expect(await shownIn(page, name)).toBe('Dr. B. Name')
    await page.locator(box).click()
    expect(await draft(page)).toContain('{ role: veterinarian, name: Dr. B. Name }')
    // The number alone makes it whole, with the box still ticked.
    await page.locator(box).click()
    await type(page, phone, '2173')
    expect(await draft(page)).toContain('{ role: veterinarian, name: Dr. B. Name, phone: "2173" }')
    await page.close()
  })

  it('may be typed, is said beside the field, and goes one step back', async () => {
    const { page } = await open('fresh', 'help')
    await type(page, name, 'Dr. B. Name')
    await type(page, phone, '2173')
    const before = await draft(page)
    await type(page, phone, "I don't know")
    await page.waitForFunction(`document.querySelector('${box}').checked`)
    expect(await draft(page)).not.toContain('2173')
    expect(await shownIn(page, name)).toBe('Dr. B. Name')
    await page.locator('.bar .buttons button').click()
    expect(await draft(page)).toBe(before)
    expect(await shownIn(page, phone)).toBe('2173')
    expect(await isTicked(page)).toBe(false)
    await page.evaluate('location.hash = "oval"')
    await type(page, '[data-at="oval.lap"] input', 'not sure')
    await page.waitForFunction('document.querySelector("[data-first=lap] .not-yet input").checked')
    expect(await textOf(page, '[data-first="lap"] .taken')).toMatch(/^Left out for now/)
    await page.close()
  })

  it('that has no box is said to be left out', async () => {
    const { page } = await open('fresh', 'fair')
    await type(page, '[data-at="name"] input', 'not sure')
    await page.waitForFunction(
      'document.querySelector("[data-at=name] .understood").textContent.startsWith("Taken as")',
    )
    await page.close()
  })
})
