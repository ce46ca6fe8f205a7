import { expect, it } from 'vitest'
import { useForms } from '../../support/use-forms.ts'

const { open } = useForms()

it.each([390, 1280])(
  'begins with its heading, keeps its buttons in view, and counts answers: %d px',
  async (width) => {
    const { page } = await open('fresh', 'help', { width })
    const said = (selector: string): Promise<string> =>
      page.$eval(selector, (node) => node.textContent ?? '')
    const fill = async (at: string, text: string): Promise<void> => {
      await page.locator(`[data-at="${at}"] input`).fill(text)
      await page.keyboard.press('Tab')
    }
    expect(await said('.bar .state')).toBe('Nothing is saved yet.')
    await fill('emergency.number', '911')
    await fill('emergency.gate', 'Gate A')
    await page.evaluate('location.hash = "oval"')
    await fill('oval.lap', '26')
    await page.waitForFunction(
      'document.querySelector("[data-at=\'oval.lap\'] .fault").textContent',
    )
    // Everything is worked out a moment after the last key.
    await new Promise((done) => setTimeout(done, 400))
    await page.locator('.bar button.strong').click()
    expect(await page.evaluate('document.activeElement.textContent')).toBe('A new file is written')
    expect(await said('dialog .told > p')).toBe('3 answers are new or changed:')
    expect(await said('dialog .answers')).toContain('If somebody is hurt')
    expect(await page.$eval('dialog .lines', (fold) => fold.hasAttribute('open'))).toBe(false)
    await page.locator('dialog .lines summary').click()
    const isSeen = await page.evaluate(
      '((box) => box.top > 0 && box.bottom <= innerHeight)(document.querySelector("dialog .strong").getBoundingClientRect())',
    )
    expect(isSeen).toBe(true)
    expect(await said('dialog .fault')).toBe('1 answer does not fit yet:')
    await page.locator('dialog .misfits a').click()
    await page.waitForFunction(
      'document.activeElement.closest("[data-at]")?.dataset.at === "oval.lap"',
    )
    await page.close()
  },
)
