import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { ManualProcedure } from '../../src/model/manual.ts'
import { emergencySheet } from '../../src/model/sheet-names.ts'
import { fitCards } from '../../src/print/cards/fit-cards.ts'
import type { Press } from '../../src/print/press/press.ts'
import { fitSheet } from '../../src/print/sheets/fit-sheet.ts'
import { renderCards } from '../../src/render/cards/render-cards.ts'
import { renderForms } from '../../src/render/forms/render-forms.ts'
import { renderSheets } from '../../src/render/sheets/render-sheets.ts'
import { assetsFor, demoManual, demos } from '../support/demo.ts'
import { faultsInPage } from '../support/measure-boxes.ts'
import { openTestPress } from '../support/test-press.ts'

// As the browser has laid it out, before anything is on paper: no words cut off, none on others.

let press: Press
let close: () => Promise<void>

beforeAll(async () => {
  ;({ press, close } = await openTestPress())
}, 60_000)

afterAll(() => close())

const length = (p: ManualProcedure): number =>
  p.sheet.steps.reduce((sum, s) => sum + s.do.length + (s.note?.length ?? 0), 0)

describe.each(demos)('%s', (id) => {
  it('posts the emergency, its longest and its shortest procedure without a word cut off or on another, on every paper', async () => {
    const { manual, words } = await demoManual(id)
    const { papers, sheets } = renderSheets(manual, await assetsFor(words, 'inline'))
    const byLength = [...manual.procedures].sort((p, q) => length(p) - length(q))
    for (const wanted of [emergencySheet, byLength[0]?.id, byLength.at(-1)?.id]) {
      const sheet = sheets.find((s) => s.id === wanted)
      if (!sheet) throw new Error('no sheet')
      for (const paper of papers) {
        const faults = await press.run({ css: paper.css, body: sheet.body }, {}, async (page) => {
          await fitSheet(page, () => '30 ft (9 m)')
          return page.evaluate(faultsInPage, '.sheet')
        })
        expect(faults, `${sheet.id} on ${paper.name}`).toEqual([])
      }
    }
  }, 60_000)

  it('has pocket cards on which everything can be read', async () => {
    const { manual, words } = await demoManual(id)
    const faults = await press.run(
      renderCards(manual, await assetsFor(words, 'inline')),
      {},
      async (page) => {
        await fitCards(page)
        return page.evaluate(faultsInPage, '.card')
      },
    )
    expect(faults).toEqual([])
  }, 60_000)

  it('has forms whose heads and lines stand clear of each other', async () => {
    const { manual, words } = await demoManual(id)
    expect(
      await press.run(renderForms(manual, await assetsFor(words, 'inline')), {}, (page) =>
        page.evaluate(faultsInPage, '.form'),
      ),
    ).toEqual([])
  }, 60_000)
})

describe('the measure itself', () => {
  const set = (body: string): Promise<string[]> =>
    press.run(
      {
        css: '.box{position:relative;width:200px;height:60px;overflow:hidden;font:16px/20px "Source Sans 3"}',
        body: `<div class="box" id="b">${body}</div>`,
      },
      {},
      (page) => page.evaluate(faultsInPage, '.box'),
    )

  it('finds words on words, words that reach out, and boxes that are too small', async () => {
    expect(await set('<p style="margin:0">fine</p><p style="margin:0">below</p>')).toEqual([])
    expect(
      (
        await set(
          '<p style="margin:0">one</p><p style="position:absolute;margin:0;top:3px;left:2px">two</p>',
        )
      ).join(),
    ).toContain('lie on each other')
    expect((await set('<p style="margin:0">one<br>two<br>three<br>four</p>')).join()).toContain(
      'holds more than it shows',
    )
    expect(
      (await set('<p style="position:absolute;margin:0;left:-20px">out</p>')).join(),
    ).toContain('reaches out')
  })
})

describe('cards with too much on them', () => {
  const card = (phones: number, words: number): { css: string; body: string } => ({
    css: '.card{width:300px;height:200px;overflow:hidden;font:calc(16px*var(--scale))/1.2 "Source Sans 3"}table{border-spacing:0}',
    body: `<article class="card" id="card-any"><table class="card-phones"><tbody>${'<tr><td>555-0100</td></tr>'.repeat(phones)}</tbody></table><p>${'word '.repeat(words)}</p></article>`,
  })
  const fitted = (phones: number, words: number): Promise<{ scale: number; phones: number }> =>
    press.run(card(phones, words), {}, async (page) => {
      await fitCards(page)
      return page.evaluate(() => ({
        scale: Number(document.querySelector('.card')?.style.getPropertyValue('--scale')),
        phones: document.querySelectorAll('tr').length,
      }))
    })

  it('are set smaller as more stands on them, then lose the last telephone numbers, never words', async () => {
    const scales = [
      (await fitted(1, 10)).scale,
      (await fitted(3, 25)).scale,
      (await fitted(4, 30)).scale,
    ]
    expect(scales).toEqual([...scales].sort((a, b) => b - a))
    expect(scales[0]).toBeGreaterThan(scales[2] ?? Infinity)
    const { scale, phones } = await fitted(12, 30)
    expect(scale).toBeLessThan(1)
    expect(phones).toBeGreaterThan(0)
    expect(phones).toBeLessThan(12)
  })

  it('are refused by name where even that is too much', async () => {
    await expect(fitted(2, 600)).rejects.toThrow('more on a card than there is room for: card-any')
  })
})
