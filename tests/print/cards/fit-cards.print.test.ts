import { describe, expect, it } from 'vitest'
import { fitCards } from '../../../src/print/cards/fit-cards.ts'
import { renderCards } from '../../../src/render/cards/render-cards.ts'
import { assetsFor, demoManual, demos } from '../../support/demo.ts'
import { faultsInPage } from '../../support/measure-boxes.ts'
import { usePress } from '../../support/test-press.ts'

const press = usePress()

describe.each(demos)('pocket cards of %s', (id) => {
  it('can all be read', async () => {
    const { manual, words } = await demoManual(id)
    const faults = await press().run(
      renderCards(manual, await assetsFor(words, 'inline')),
      {},
      async (page) => {
        await fitCards(page)
        return page.evaluate(faultsInPage, '.card')
      },
    )
    expect(faults).toEqual([])
  })
})

describe('cards with too much on them', () => {
  const card = (phones: number, words: number): { css: string; body: string } => ({
    css: '.card{width:300px;height:200px;overflow:hidden;font:calc(16px*var(--scale))/1.2 "Source Sans 3"}table{border-spacing:0}',
    body: `<article class="card" id="card-any"><table class="card-phones"><tbody>${'<tr><td>555-7700</td></tr>'.repeat(phones)}</tbody></table><p>${'word '.repeat(words)}</p></article>`,
  })
  const fitted = (phones: number, words: number): Promise<{ scale: number; phones: number }> =>
    press().run(card(phones, words), {}, async (page) => {
      await fitCards(page)
      return page.evaluate(() => ({
        scale: Number(document.querySelector('.card')?.style.getPropertyValue('--scale')),
        phones: document.querySelectorAll('tr').length,
      }))
    })

  it('are set smaller as more stands on them, never below 8 pt, then lose the last telephone numbers, never words', async () => {
    const scales = [
      (await fitted(1, 10)).scale,
      (await fitted(3, 25)).scale,
      (await fitted(4, 30)).scale,
    ]
    expect(scales).toEqual([...scales].sort((a, b) => b - a))
    expect(scales[0]).toBeGreaterThan(scales[2] ?? Infinity)
    const { scale, phones } = await fitted(12, 30)
    expect(scale).toBe(1)
    expect(phones).toBeGreaterThan(0)
    expect(phones).toBeLessThan(12)
  })

  it('are refused by name where even that is too much', async () => {
    await expect(fitted(2, 600)).rejects.toThrow('more on a card than there is room for: card-any')
  })
})
