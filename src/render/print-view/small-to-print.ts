import { fieldBookRoom, handoutRoom } from '../../model/booklet.ts'
import type { Manual } from '../../model/manual.ts'
import { foldedLengths, type Paper, paperLengths, paperSize } from '../../model/papers.ts'
import type { RenderAssets } from '../assets.ts'
import { renderCards } from '../cards/render-cards.ts'
import { renderFieldBook, renderHandout } from '../field-book/render-field-book.ts'
import type { ToPrint } from './print-view.ts'

/** Two pages of a booklet beside each other on a leaf that lies on its side. */
function foldedCss(paper: Paper): string {
  const [width, height] = foldedLengths(paper)
  return `@page{size:calc(2*${width}) ${height};margin:0}.folded{display:flex;width:calc(2*${width});height:${height};break-after:page}.folded:last-child{break-after:auto}.folded .leaf{break-after:auto}`
}

/** A page of a booklet on a whole leaf, as large as it has room for. */
function enlargedCss(paper: Paper): string {
  const [width, height] = paperSize(paper)
  // A page is half as wide as the leaf is high; a hair is left, so that it stays one page.
  const zoom = Math.min(width / (height / 2), height / width) - 0.001
  return `@page{size:${paperLengths(paper).join(' ')};margin:0}.leaf{zoom:${zoom.toFixed(4)};margin:0 auto}`
}

/** The field book: to fold, or a page on each leaf. */
export function fieldBookToPrint(manual: Manual, assets: RenderAssets, folds: boolean): ToPrint {
  const { words } = assets
  const { css, body } = renderFieldBook(manual, assets)
  const { paper } = manual.facility
  return {
    title: folds ? words.fieldBook.booklet : words.fieldBook.title,
    advice: folds ? [words.fieldBook.fold, words.printing.noHeads] : [words.printing.noHeads],
    work: { kind: 'booklet', body, room: fieldBookRoom, folds },
    hasMargins: false,
    look: '',
    css: { paper: `${css}\n${folds ? foldedCss(paper) : enlargedCss(paper)}`, laying: css },
  }
}

/** The two small pages for volunteers, each on a leaf. */
export function handoutToPrint(manual: Manual, assets: RenderAssets): ToPrint {
  const { words } = assets
  const { css, body } = renderHandout(manual, assets)
  return {
    title: words.fieldBook.handout,
    advice: [words.printing.noHeads],
    work: { kind: 'booklet', body, room: handoutRoom, folds: false },
    hasMargins: false,
    look: '',
    css: { paper: `${css}\n${enlargedCss(manual.facility.paper)}`, laying: css },
  }
}

/** The pocket cards. */
export function cardsToPrint(manual: Manual, assets: RenderAssets): ToPrint {
  const { words } = assets
  const { css, body } = renderCards(manual, assets)
  return {
    title: words.cards.title,
    advice: [words.printing.noHeads],
    work: { kind: 'cards', body },
    hasMargins: false,
    look: '',
    css: { paper: css, laying: css },
  }
}
