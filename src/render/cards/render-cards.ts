import type { Manual, ManualCard } from '../../model/manual.ts'
import type { Paper } from '../../model/papers.ts'
import type { RenderAssets } from '../assets.ts'
import { type Html, html } from '../text/html.ts'
import { createTemplates } from '../text/templates.ts'
import { bySignal, cautionView } from '../views/caution-view.ts'
import { figureView } from '../views/figure-view.ts'
import { createPen, type Pen } from '../views/pen.ts'
import { reckonerView } from '../views/reckoner-view.ts'

/**
 * Page and card, mm: 3.5 × 5 in, and the nearest photo size in whole millimeters, so that sleeves
 * can be bought.
 */
const sizes: Readonly<
  Record<
    Paper,
    { readonly page: readonly [number, number]; readonly card: readonly [number, number] }
  >
> = {
  letter: { page: [215.9, 279.4], card: [88.9, 127] },
  a4: { page: [210, 297], card: [89, 127] },
}

const across = 2
const perPage = across * 2

/** How far a cut mark stands off the cards, and how long it is, mm. */
const mark = { gap: 1.5, length: 5 } as const

/**
 * Marks in the margin where the edges of the cards meet it: a cut from mark to mark runs along four
 * edges at once.
 */
function cutMarks(paper: Paper): Html {
  const { page, card } = sizes[paper]
  const edges = (axis: 0 | 1): readonly number[] =>
    [0, 1, 2].map((i) => (page[axis] - across * card[axis]) / 2 + i * card[axis])
  const [xs, ys] = [edges(0), edges(1)]
  const ends = (at: readonly number[]): readonly number[] => [
    (at[0] ?? 0) - mark.gap - mark.length,
    (at[2] ?? 0) + mark.gap,
  ]
  const d = [
    ...xs.flatMap((x) => ends(ys).map((y) => `M${x.toFixed(2)} ${y.toFixed(2)}v${mark.length}`)),
    ...ys.flatMap((y) => ends(xs).map((x) => `M${x.toFixed(2)} ${y.toFixed(2)}h${mark.length}`)),
  ].join('')
  return html(
    `<svg class="cut-marks" viewBox="0 0 ${page[0]} ${page[1]}" aria-hidden="true"><path d="${d}" fill="none" stroke="#000" stroke-width=".18"/></svg>`,
  )
}

function cardView(card: ManualCard, pen: Pen) {
  return {
    id: card.id,
    title: pen.line(card.title),
    for: pen.line(card.for),
    figures: card.figures.map((f) => figureView(f.name, pen, f.label)),
    cautions: [...card.cautions].sort(bySignal).map((c) => cautionView(c, pen)),
    hasReckoner: card.reckoner !== undefined,
    reckoner: card.reckoner ? reckonerView(card.reckoner, pen) : undefined,
    hasPhones: card.phones.length > 0,
    phones: card.phones.map((c) => ({ role: c.roleTitle, name: c.name, phone: c.phone })),
  }
}

/**
 * The pocket cards, four to a page of the facility's paper with cut marks: `css` and `body` of one
 * document. A section `.card-page` is exactly one page; every `.card` has a fixed size, and the
 * printer finds the largest type (`--scale`) at which all of it fits. Without cards the body is
 * empty.
 */
export function renderCards(
  manual: Manual,
  assets: RenderAssets,
): { readonly css: string; readonly body: string } {
  const pen = createPen(manual, assets.words, 'paper', {
    worksheetHref: () => undefined,
    procedureHref: () => undefined,
  })
  const { paper } = manual.facility
  const { page, card } = sizes[paper]
  const cards = manual.cards.map((c) => cardView(c, pen))
  const pages = Array.from({ length: Math.ceil(cards.length / perPage) }, (_, i) =>
    cards.slice(i * perPage, (i + 1) * perPage),
  )
  const size = `@page{size:${page[0]}mm ${page[1]}mm;margin:0}.card-page{width:${page[0]}mm;height:${page[1]}mm;grid-template:repeat(2,${card[1]}mm)/repeat(2,${card[0]}mm)}.card{width:${card[0]}mm;height:${card[1]}mm}`
  const { number, radio } = manual.emergency
  const data = {
    words: assets.words,
    facility: manual.facility,
    date: manual.date,
    emergency: { number, radio },
    marks: cutMarks(paper),
    pages,
  }
  return {
    css: [size, assets.styles['shared'], assets.styles['cards']].join('\n'),
    body: createTemplates(assets.templates).render('cards/cards', data),
  }
}
