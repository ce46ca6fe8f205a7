import { describe, expect, it } from 'vitest'
import { type BookletRoom, fieldBookRoom } from '../../../src/model/booklet.ts'
import { fitFieldBook } from '../../../src/print/field-book/fit-field-book.ts'
import { renderFieldBook } from '../../../src/render/field-book/render-field-book.ts'
import { assetsFor, demoManual, demos } from '../../support/demo.ts'
import { faultsInPage } from '../../support/measure-boxes.ts'
import { bareFacility, manualOf } from '../../support/small.ts'
import { usePress } from '../../support/test-press.ts'

const press = usePress()

/** Type sizes of all words on the pages, points, the smallest first. Sent to the browser. */
function smallestType(): number {
  const dom = globalThis as unknown as {
    document: {
      querySelectorAll(
        s: string,
      ): Iterable<{ readonly childNodes: Iterable<{ nodeType: number; textContent: string }> }>
    }
    getComputedStyle(e: object): { fontSize: string }
  }
  const sizes = [...dom.document.querySelectorAll('.leaf *:not(svg *)')].flatMap((e) =>
    [...e.childNodes].some((n) => n.nodeType === 3 && n.textContent.trim() !== '')
      ? [Number.parseFloat(dom.getComputedStyle(e).fontSize) * 0.75]
      : [],
  )
  return Math.min(...sizes)
}

describe.each(demos)('the field book of %s', (id) => {
  it('has at most 24 pages that fold, with all that was declared, in type that can be read', async () => {
    const { manual, words } = await demoManual(id)
    const copy = renderFieldBook(manual, await assetsFor(words, 'inline'))
    const { pages, faults, smallest } = await press().run(copy, {}, async (page) => ({
      pages: await fitFieldBook(page, fieldBookRoom),
      faults: await page.evaluate(faultsInPage, '.leaf'),
      smallest: await page.evaluate(smallestType),
    }))
    expect(pages.length % 4).toBe(0)
    expect(pages.length).toBeLessThanOrEqual(24)
    const ids = pages.map((p) => p.id)
    for (const page of manual.fieldBook.pages.filter((p) => !p.spare))
      expect(ids).toContain(`page-${page.id}`)
    expect(faults).toEqual([])
    // Words that the small sign between items is set in are a sign, not words.
    expect(smallest).toBeGreaterThanOrEqual(8.49)
    for (const p of pages) expect(p.title, p.id).not.toBe('')
  })
})

describe('a facility that says next to nothing', () => {
  it('has a field book to fill in', async () => {
    const { manual, words } = await manualOf(bareFacility)
    const copy = renderFieldBook(manual, await assetsFor(words, 'inline'))
    const pages = await press().run(copy, {}, (page) => fitFieldBook(page, fieldBookRoom))
    expect(pages.length % 4).toBe(0)
    expect(pages.map((p) => p.id)).toContain('page-emergency')
  })
})

describe('a facility with very much to say of emergencies', () => {
  it('has all of it in its field book, overleaf where one page is too small', async () => {
    const long = 'second drive past the old grain elevator, through the double gate, ring twice'
    const roles = ['superintendent', 'ambulance', 'veterinarian', 'fire', 'presiding-judge']
    const contacts = [...roles, 'veterinarian', 'fire', 'ambulance', 'veterinarian'].map(
      (role, i) =>
        `  - { role: ${role}, name: Dr. Ilse Tramm the ${i}th, phone: 740-555-416${i} x2, note: "${long}" }`,
    )
    const { manual, words } = await manualOf(
      `${bareFacility}contacts:\n${contacts.join('\n')}\nemergency:\n  number: "911"\n  address: "${long}"\n  gate: "${long}"\n  way: "${long}"\n  meeting-point: "${long}"\n  first-aid: ["${long}", "${long}"]\n`,
    )
    const copy = renderFieldBook(manual, await assetsFor(words, 'inline'))
    const { said, faults } = await press().run(copy, {}, async (page) => {
      await fitFieldBook(page, fieldBookRoom)
      return {
        said: await page.evaluate(() =>
          [...document.querySelectorAll('.e-phone')].map((e) => e.textContent),
        ),
        faults: await page.evaluate(faultsInPage, '.leaf'),
      }
    })
    expect(faults).toEqual([])
    for (const [i] of contacts.entries())
      expect(said.filter((s) => s?.includes(`740-555-416${i}`))).toHaveLength(1)
  })
})

type Leaf = { readonly id: string; readonly rows: number; readonly spare?: boolean }

describe('laying out', () => {
  const leaf = ({ id, rows, spare }: Leaf): string =>
    `<section class="leaf" id="${id}"${spare ? ' data-spare' : ''}><h1>${id}</h1><div class="blocks"><div class="block"><h2>Head</h2><table><tbody>${Array.from({ length: rows }, (_, i) => `<tr><td>${id} ${i}</td></tr>`).join('')}</tbody></table></div></div><b class="folio"></b></section>`
  const laidOut = (leaves: readonly Leaf[], room: BookletRoom = fieldBookRoom) =>
    press().run(
      {
        css: '.leaf{width:300px;height:240px;font:var(--fs)/1.2 "Source Sans 3"}.blocks{height:200px;overflow:hidden}td,h1,h2{padding:0;margin:0}',
        body: `${leaves.map(leaf).join('')}<p><i data-page="last" data-says="see {page}">binder</i></p><section class="leaf notes"><h1>Notes</h1><div class="blocks"></div><b class="folio"></b></section>`,
      },
      {},
      async (page) => ({
        pages: await fitFieldBook(page, room),
        words: await page.evaluate(() =>
          [...document.querySelectorAll('.leaf')].map((l) =>
            [...l.querySelectorAll('td, h2, .folio')].map((e) => e.textContent),
          ),
        ),
        seen: await page.evaluate(() => document.querySelector('i')?.textContent),
      }),
    )

  it('takes the largest type at which a page fits, and goes on overleaf rather than below the smallest', async () => {
    const { pages, words } = await laidOut([
      { id: 'few', rows: 3 },
      { id: 'more', rows: 11 },
      { id: 'many', rows: 30 },
    ])
    const sizes = pages.slice(0, 2).map((p) => p.size)
    expect(sizes[0]).toBe(10.6)
    expect(sizes[1]).toBeLessThan(10.6)
    expect(pages.length).toBe(8)
    // Every row stands once, in its order, and the head is not said again.
    const many = words
      .slice(2)
      .flat()
      .filter((w) => w?.startsWith('many'))
    expect(many).toEqual(Array.from({ length: 30 }, (_, i) => `many ${i}`))
    expect(
      words
        .slice(2)
        .flat()
        .filter((w) => w === 'Head'),
    ).toHaveLength(1)
    expect(words.map((w) => w.at(-1))).toEqual(['1', '2', '3', '4', '5', '6', '7', '8'])
  })

  it('leaves out what can be spared, and leads to the binder instead', async () => {
    const leaves = (last: number) => [
      ...Array.from({ length: 3 }, (_, i) => ({ id: `page${i}`, rows: 2 })),
      { id: 'last', rows: last, spare: true },
    ]
    const whole = await laidOut(leaves(2), { carried: 4, most: 4 })
    expect([whole.pages.length, whole.seen]).toEqual([4, 'see 4'])
    const without = await laidOut(leaves(30), { carried: 4, most: 4 })
    expect(without.pages.map((p) => p.id)).toEqual(['page0', 'page1', 'page2', ''])
    expect(without.seen).toBe('binder')
  })

  it('is longer than what is usually carried where nothing can be spared, up to what can be folded', async () => {
    const leaves = Array.from({ length: 9 }, (_, i) => ({ id: `page${i}`, rows: 2 }))
    const { pages } = await laidOut(leaves, { carried: 8, most: 12 })
    expect(pages).toHaveLength(12)
    await expect(laidOut(leaves, { carried: 4, most: 8 })).rejects.toThrow(
      'the booklet has 12 pages, and at most 8 can be folded',
    )
  })
})
