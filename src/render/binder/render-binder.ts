import type { Ink } from '../../model/ink.ts'
import type { Manual } from '../../model/manual.ts'
import { atOnce, type Steps } from '../../model/steps.ts'
import { type RenderAssets, stylesOf } from '../assets.ts'
import { blamingLinks } from '../text/dead-link.ts'
import { createTemplates, type Templates } from '../text/templates.ts'
import { type Book, openBook } from './book.ts'
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
  /** Leading pages that are not counted: the opener of a section. */
  readonly unnumbered: number
  /** Whether it begins on a right-hand page, after a blank one where need be. */
  readonly beginsRight: boolean
  /** Style with page rules for a part that begins on this side of a leaf. */
  readonly css: Readonly<Record<Hand, string>>
  /** Ways of working in it, which are bookmarks below their procedures; no other headings are. */
  readonly methods: readonly string[]
  /** Empty `data-page-of` slots name the places whose page numbers the printer puts in. */
  readonly body: string
}

export type Binder = {
  readonly parts: readonly BinderPart[]
  readonly sides: Sides
  /** What a blank page says. */
  readonly blank: string
  /** What all parts share of their style: everything but the rules of their pages. */
  readonly style: string
}

/** A part as its template makes it, with the heads of its pages. */
type WrittenPart = {
  readonly id: string
  readonly number: number | undefined
  readonly named: readonly NamedPage[]
  readonly body: string
}

function writeSection(
  { shared }: Book,
  section: ReturnType<typeof sectionData>,
  templates: Templates,
): WrittenPart {
  const { id, number, title, procedures } = section
  const part = `${number}  ${title}`
  const named = [
    ...procedures.map((p) => ({
      name: `p-${p.id}`,
      part,
      subject: `${p.number}  ${p.title}`,
    })),
    { name: 'section-notes', part, subject: '' },
  ]
  return { id, number, named, body: templates.render('binder/section', { ...shared, section }) }
}

function writeBack(book: Book, part: Book['back'][number], templates: Templates): WrittenPart {
  const { id, number, title } = part
  return {
    id,
    number,
    named: [{ name: `b-${id}`, part: `${number}  ${title}`, subject: '' }],
    body: templates.render(`binder/${id}`, { ...book.shared, part, ...backData[id](book) }),
  }
}

/** All parts in the order of the book, one after the other. */
function* writingParts(book: Book, templates: Templates): Steps<readonly WrittenPart[]> {
  const { manual, words, shared } = book
  // What stands first in the book is drawn first; the front lists what all parts have drawn.
  const glance = glanceDrawings(book)
  const sections: ReturnType<typeof sectionData>[] = []
  for (const section of manual.sections) {
    sections.push(sectionData(book, section))
    yield
  }
  const written: WrittenPart[] = []
  for (const section of sections) {
    written.push(writeSection(book, section, templates))
    yield
  }
  for (const part of book.back) {
    written.push(writeBack(book, part, templates))
    yield
  }
  const heads = { part: manual.facility.name, subject: words.binder.subject }
  const front: WrittenPart = {
    id: 'front',
    number: undefined,
    named: [
      { name: 'front', ...heads },
      { name: 'contents', ...heads, showsTabs: true },
    ],
    body: templates.render('binder/front', { ...shared, ...glance, ...frontData(book) }),
  }
  return [front, ...written]
}

/** The style of what is printed in black, for a document that is nothing else. */
const blackStyle = (assets: RenderAssets): string =>
  stylesOf(assets, 'black').replaceAll('.black', ':root')

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
 * The binder in parts, rendered one after the other: front, one part a section, and the parts behind them. Each is numbered by
 * itself (`3-2`), so that a page more in one moves no number in another, and printed pages can be
 * exchanged one by one.
 * @throws DeadLink when something leads to a place that the binder does not have.
 */
export function* renderingBinder(
  manual: Manual,
  assets: RenderAssets,
  ink: Ink = 'color',
): Steps<Binder> {
  const { words } = assets
  const { paper, name, revision, binder } = manual.facility
  const { sides, sections, dividers } = binder
  const blank = words.binder.blank
  const book = openBook(manual, words)
  const templates = createTemplates(assets.templates)
  const style = [
    stylesOf(assets, 'shared', 'emergency', 'binder'),
    ...(ink === 'black' ? [blackStyle(assets)] : []),
  ].join('\n')
  const foot = `${name} · ${words.binder.revision} ${revision} · ${manual.date}`
  const titles = [...manual.sections, ...book.back].map((part) => part.title)
  const written = yield* writingParts(book, templates)
  const parts = written.map((part): BinderPart => {
    const { id, number, named } = part
    const isSection = manual.sections.some((s) => s.id === id)
    const divides = dividers === 'leaves' && number !== undefined && !isSection
    const pages: PartPages = { paper, sides, foot, ink, number, titles, pages: named, divides }
    return {
      id,
      pages,
      unnumbered: isSection ? 1 : 0,
      // The first procedure of a section opens on the back of its opener.
      beginsRight: isSection || sections === 'right-hand' || dividers !== 'none',
      css: partCss(part, pages, style),
      methods: manual.procedures
        .filter((p) => p.section === id)
        .flatMap((p) => p.methods.map((m) => m.title)),
      body: part.body,
    }
  })
  return { parts: blamingLinks(assets.templates, () => linkParts(parts)), sides, blank, style }
}

/**
 * The whole binder at once.
 * @throws DeadLink when something leads to a place that the binder does not have.
 */
export const renderBinder = (manual: Manual, assets: RenderAssets, ink?: Ink): Binder =>
  atOnce(renderingBinder(manual, assets, ink))
