import type { Manual } from '../../model/manual.ts'
import { type RenderAssets, stylesOf } from '../assets.ts'
import { createTemplates, type Templates } from '../text/templates.ts'
import { type Book, openBook } from './book.ts'
import { dividedParts } from './divided-parts.ts'
import { linkParts } from './link-parts.ts'
import {
  type Hand,
  type NamedPage,
  type PartPages,
  partPageRules,
  type Sides,
} from './page-rules.ts'
import { backData, frontData, glanceDrawings, sectionData } from './part-data.ts'

/** One part of a binder, printed by itself. */
export type BinderPart = {
  readonly id: string
  readonly pages: PartPages
  /** Leading pages without a number: the divider and, where both sides are printed, its back. */
  readonly unnumbered: number
  /** Style with page rules for a part that begins on this side of a leaf. */
  readonly css: Readonly<Record<Hand, string>>
  /** Empty `data-page-of` slots name the places whose page numbers the printer puts in. */
  readonly body: string
}

export type Binder = {
  readonly parts: readonly BinderPart[]
  readonly sides: Sides
  /** Whether every part begins on a right-hand page, after a blank one where need be. */
  readonly rightHand: boolean
  /** What a blank page says. */
  readonly blank: string
}

/** A part as its template makes it, with the heads of its pages. */
type WrittenPart = {
  readonly id: string
  readonly number: number | undefined
  readonly named: readonly NamedPage[]
  readonly body: string
}

/** All parts in the order of the book. */
function writtenParts(book: Book, templates: Templates): readonly WrittenPart[] {
  const { manual, words, shared } = book
  // What stands first in the book is drawn first; the front lists what all parts have drawn.
  const glance = glanceDrawings(book)
  const sections = manual.sections.map((s) => sectionData(book, s))
  const written = sections.map((section) => ({
    id: section.id,
    number: section.number,
    named: section.procedures.map((p) => ({
      name: `p-${p.id}`,
      left: `${section.number}  ${section.title}`,
      right: `${p.number}  ${p.title}`,
    })),
    body: templates.render('binder/section', { ...shared, section }),
  }))
  const back = book.back.map((part) => ({
    id: part.id,
    number: part.number,
    named: [{ name: `b-${part.id}`, left: `${part.number}  ${part.title}`, right: '' }],
    body: templates.render(`binder/${part.id}`, { ...shared, part, ...backData[part.id](book) }),
  }))
  const front = {
    id: 'front',
    number: undefined,
    named: [{ name: 'front', left: manual.facility.name, right: words.binder.subject }],
    body: templates.render('binder/front', { ...shared, ...glance, ...frontData(book, sections) }),
  }
  return [front, ...written, ...back]
}

/** Style of a part: page rules by the side on which it begins, and which page is whose. */
function partCss(part: WrittenPart, pages: PartPages, style: string): BinderPart['css'] {
  const css = (first: Hand): string =>
    [
      partPageRules(pages, first),
      ...part.named.map((n) => `.${n.name}{page:${n.name}}`),
      style,
    ].join('\n')
  return { right: css('right'), left: css('left') }
}

/**
 * The binder in parts: front, one part a section, and the parts behind them. Each is numbered by
 * itself (`3-2`), so that a page more in one moves no number in another, and printed pages can be
 * exchanged one by one.
 * @throws RangeError when something leads to a place that the binder does not have.
 */
export function renderBinder(manual: Manual, assets: RenderAssets): Binder {
  const { words } = assets
  const { paper, name, revision, binder } = manual.facility
  const { sides, sections, dividers } = binder
  const blank = words.binder.blank
  const book = openBook(manual, words)
  const templates = createTemplates(assets.templates)
  const style = stylesOf(assets, 'shared', 'emergency', 'binder')
  const divided = dividers === 'leaves' ? dividedParts(manual, words) : []
  const foot = `${name} · ${words.binder.revision} ${revision} · ${manual.date}`
  const tabs = manual.sections.length + book.back.length
  const parts = writtenParts(book, templates).map((part): BinderPart => {
    const { id, number, named } = part
    const pages: PartPages = { paper, sides, foot, number, tabs, pages: named, blank }
    const divider = divided.find((d) => d.number === number)
    const leaf = divider
      ? templates.render('binder/divider', { ...divider, twoSides: sides === 2 })
      : ''
    return {
      id,
      pages,
      unnumbered: divider ? sides : 0,
      css: partCss(part, pages, style),
      body: leaf + part.body,
    }
  })
  // A divider is a leaf of its own, so that its part begins on a right-hand page whether asked to
  // or not.
  return {
    parts: linkParts(parts),
    sides,
    rightHand: sides === 2 && (sections === 'right-hand' || dividers !== 'none'),
    blank,
  }
}
