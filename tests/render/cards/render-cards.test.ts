import { describe, expect, it } from 'vitest'
import { renderCards } from '../../../src/render/cards/render-cards.ts'
import { assetsFor } from '../../support/demo.ts'
import { changedSmallManual, smallManual } from '../../support/small.ts'

const pagesOf = (body: string): readonly string[] =>
  body.split('<section class="card-page">').slice(1)
const count = (text: string, part: string): number => text.split(part).length - 1

/** Six cards, which do not go on one page. */
async function sixCards() {
  const { manual, words } = await smallManual()
  const cards = Array.from({ length: 6 }, (_, i) =>
    manual.cards.map((c) => ({ ...c, id: `${c.id}-${i}` })),
  ).flat()
  return { manual: { ...manual, cards }, words }
}

const onA4 = () => changedSmallManual((text) => text.replace('paper: letter', 'paper: a4'))

describe('pocket cards', () => {
  it('stand four to a leaf at most, each once and in order, with marks to cut along on both sides', async () => {
    const { manual, words } = await sixCards()
    const { body } = renderCards(manual, await assetsFor(words, 'linked'))
    const pages = pagesOf(body)
    expect(pages).toHaveLength(2 * Math.ceil(manual.cards.length / 4))
    for (const p of pages) {
      expect(count(p, '<article class="card"')).toBeLessThanOrEqual(4)
      expect(count(p, '<svg class="cut-marks"')).toBe(1)
    }
    expect([...body.matchAll(/<article class="card" id="card-([^"]*)"/g)].map((m) => m[1])).toEqual(
      manual.cards.map((c) => c.id),
    )
    expect(body).not.toContain('undefined')
  })

  it('bear revision and date, and every number and caution of the card', async () => {
    const { manual, words } = await sixCards()
    const { body } = renderCards(manual, await assetsFor(words, 'linked'))
    const cards = body.split('<article class="card"').slice(1)
    for (const [i, card] of manual.cards.entries()) {
      expect(cards[i], card.id).toContain(
        `${words.sheet['revision']} ${manual.facility.revision} · ${manual.date}`,
      )
      expect(count(cards[i] ?? '', 'class="card-figure'), card.id).toBe(card.figures.length)
      expect(count(cards[i] ?? '', 'class="caution '), card.id).toBe(card.cautions.length)
      expect(count(cards[i] ?? '', 'is-estimate'), card.id).toBe(
        card.figures.filter((f) => manual.quantities[f.name]?.estimate).length,
      )
      const back = body.split(`id="card-${card.id}-back"`)[1] ?? ''
      for (const p of card.phones) expect(back, card.id).toContain(p.phone)
    }
  })

  it.each([
    ['letter', smallManual],
    ['A4', onA4],
  ])('are as large as %s paper asks for, inside their marks', async (_, load) => {
    const { manual, words } = await load()
    const { css, body } = renderCards(manual, await assetsFor(words, 'linked'))
    const [page, card] =
      manual.facility.paper === 'letter'
        ? [
            [215.9, 279.4],
            [88.9, 127],
          ]
        : [
            [210, 297],
            [89, 127],
          ]
    expect(css).toContain(`@page{size:${page[0]}mm ${page[1]}mm`)
    expect(css).toContain(`.card{width:${card[0]}mm;height:${card[1]}mm}`)
    const marks = [
      ...(/<path d="([^"]*)"/.exec(body)?.[1] ?? '').matchAll(/M([\d.]+) ([\d.]+)([vh])([\d.]+)/g),
    ].map((m) => ({ x: Number(m[1]), y: Number(m[2]), along: m[3], length: Number(m[4]) }))
    expect(marks).toHaveLength(12)
    const [left, top] = [
      ((page[0] ?? 0) - 2 * (card[0] ?? 0)) / 2,
      ((page[1] ?? 0) - 2 * (card[1] ?? 0)) / 2,
    ]
    for (const m of marks) {
      const [far, edge] =
        m.along === 'v' ? [(page[1] ?? 0) - top, top] : [(page[0] ?? 0) - left, left]
      const from = m.along === 'v' ? m.y : m.x
      expect(from + m.length <= edge || from >= far, JSON.stringify(m)).toBe(true)
      const at = m.along === 'v' ? (m.x - left) / (card[0] ?? 1) : (m.y - top) / (card[1] ?? 1)
      expect(at).toBeCloseTo(Math.round(at), 3)
    }
  })
})

describe('a facility without cards', () => {
  it('has no page of them', async () => {
    const { manual, words } = await smallManual()
    expect(
      renderCards({ ...manual, cards: [] }, await assetsFor(words, 'linked')).body.trim(),
    ).toBe('')
  })
})

describe('backs of cards', () => {
  it('lie behind their fronts when the leaf is turned on its long edge', async () => {
    const { manual, words } = await sixCards()
    const cards = manual.cards.map((c, i) => ({
      ...c,
      phones: i === 4 ? [] : [{ role: 'r', roleTitle: 'R', name: 'N', phone: '555', note: '' }],
      reckoner: undefined,
    }))
    const { body } = renderCards({ ...manual, cards }, await assetsFor(words, 'linked'))
    const cells = pagesOf(body).map((page) =>
      [...page.matchAll(/<article class="card[^"]*" id="card-([^"]*)"|<div><\/div>/g)].map(
        (m) => m[1] ?? '',
      ),
    )
    const [a, b, c, d, , f] = cards.map((card) => `${card.id}-back`)
    expect(cells[1]).toEqual([b, a, d, c])
    expect(cells[3]).toEqual([f, '', '', ''])
  })
})
