import type { ManualCard } from '../../model/manual/card.ts'
import { bySignal } from '../../model/manual/caution.ts'
import type { Manual } from '../../model/manual.ts'
import { binderStock, paperSize } from '../../model/papers.ts'
import { type RenderAssets, stylesOf } from '../assets.ts'
import { createTemplates } from '../text/templates.ts'
import { cautionView } from '../views/caution-view.ts'
import { figureView } from '../views/figure-view.ts'
import { createPen, type Pen } from '../views/pen.ts'
import { reckonerView } from '../views/reckoner-view.ts'
import { cutMarks } from './cut-marks.ts'

/** Cards beside each other, as many as below each other. */
const across = 2
const perPage = across * across

type CardView = ReturnType<typeof cardView>

/** A side of a card in its place on the page; a place may be empty. */
type Cell = { readonly front?: CardView; readonly back?: CardView }

/**
 * Two pages for every four cards, their fronts and their backs. Turned on the long edge, a leaf has
 * each back behind its front: left and right change places.
 */
function pagesOf(cards: readonly CardView[]): readonly (readonly Cell[])[] {
  return Array.from({ length: Math.ceil(cards.length / perPage) }, (_, i) => {
    const own = cards.slice(i * perPage, (i + 1) * perPage)
    const backs = Array.from({ length: perPage }, (_, at): Cell => {
      const card = own[at - (at % across) + (across - 1 - (at % across))]
      return card && (card.hasReckoner || card.hasPhones) ? { back: card } : {}
    })
    return [own.map((card): Cell => ({ front: card })), backs]
  }).flat()
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
 * The pocket cards, four to a leaf of the facility's paper with cut marks, numbers and hazards on the
 * front, tables and telephone numbers on the back: `css` and `body` of one document. A section `.card-page` is exactly one page; every `.card` has a fixed size, and the
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
  const page = paperSize(paper)
  const { card } = binderStock(paper)
  const cards = manual.cards.map((c) => cardView(c, pen))
  const size = `@page{size:${page[0]}mm ${page[1]}mm;margin:0}.card-page{width:${page[0]}mm;height:${page[1]}mm;grid-template:repeat(${across},${card[1]}mm)/repeat(${across},${card[0]}mm)}.card{width:${card[0]}mm;height:${card[1]}mm}`
  const { number, radio } = manual.emergency
  const data = {
    words: assets.words,
    facility: manual.facility,
    date: manual.date,
    emergency: { number, radio },
    marks: cutMarks(page, card, across),
    pages: pagesOf(cards),
  }
  return {
    css: `${size}\n${stylesOf(assets, 'shared', 'cards')}`,
    body: createTemplates(assets.templates).render('cards', data),
  }
}
