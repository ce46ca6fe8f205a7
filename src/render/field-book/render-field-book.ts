import type { FieldBookPage, FieldBookPart, ManualBooklet } from '../../model/manual/field-book.ts'
import type { Manual } from '../../model/manual.ts'
import { foldedLengths } from '../../model/papers.ts'
import { fill } from '../../model/pattern.ts'
import { type RenderAssets, stylesOf } from '../assets.ts'
import { backPartsOf } from '../binder/divided-parts.ts'
import { renderDrawings } from '../drawings/drawings.ts'
import { escapeHtml } from '../text/escape-html.ts'
import { type Html, html } from '../text/html.ts'
import { createTemplates } from '../text/templates.ts'
import { createPen } from '../views/pen.ts'
import { partBlocks } from './part-blocks.ts'
import type { Setter } from './setter.ts'

type Words = RenderAssets['words']

/** Where a page of the book is linked to. */
const anchor = (page: string): string => `page-${page}`

/**
 * A slot for words that name a page; the printer puts them in once all pages are laid out.
 * @param says With `{page}` for its number.
 * @param without What is said instead where the page is left out.
 */
const slot = (page: string, says: string, without: string): string =>
  `<span data-page="${anchor(page)}" data-says="${escapeHtml(says)}">${escapeHtml(without)}</span>`

/**
 * The page on which the steps of a procedure stand, or else whatever of it is shown; where a way of
 * working is given, its steps alone.
 */
function pageOf(
  pages: readonly FieldBookPage[],
  procedure: string,
  method?: string,
): string | undefined {
  const shows = (page: FieldBookPage, steps: boolean): boolean =>
    page.parts.some(
      (p) =>
        p.kind === 'procedure' &&
        p.procedure.id === procedure &&
        (method === undefined || p.methods.includes(method)) &&
        (!steps || p.show.includes('steps')),
    )
  const worked = pages.find((p) => shows(p, true))
  // A page that only says which way to take is no place to find it.
  return (worked ?? (method === undefined ? pages.find((p) => shows(p, false)) : undefined))?.id
}

/** Where the rest of a part stands in the binder, such as `2.1`. */
function inBinder(part: FieldBookPart, manual: Manual, words: Words): string | undefined {
  const back = (id: string): string =>
    String(backPartsOf(manual, words).find((b) => b.id === id)?.number)
  switch (part.kind) {
    case 'procedure':
      return part.procedure.number
    case 'plan':
      return back('plans')
    case 'reckoner':
      return `${back('reckoners')}.${manual.reckoners.indexOf(part.reckoner) + 1}`
    case 'cautions':
      return back('safety')
    case 'symptoms':
      return back('symptoms')
    case 'terms':
      return back('glossary')
    default:
      return undefined
  }
}

/** Words on where the rest of a page stands; whatever has no number stands at the front. */
function restOf(page: FieldBookPage, manual: Manual, words: Words): string {
  const places = page.parts.flatMap((part) => inBinder(part, manual, words) ?? [])
  return places.length === 0
    ? words.fieldBook.front
    : fill(words.fieldBook.rest, { places: [...new Set(places)].join(', ') })
}

/** What all pages of a booklet are made with. */
export function bookletSetter(
  { pages, common }: ManualBooklet,
  manual: Manual,
  words: Words,
): Omit<Setter, 'title' | 'named'> {
  const placeOf = (procedure: string, method?: string): string => {
    const page = pageOf(pages, procedure, method)
    const number = manual.procedures.find((p) => p.id === procedure)?.number ?? ''
    const binder = fill(words.fieldBook.rest, { places: number })
    return page === undefined ? binder : slot(page, words.fieldBook.page, binder)
  }
  const pen = createPen(manual, words, 'paper', {
    worksheetHref: () => undefined,
    procedureHref: (id) => {
      const page = pageOf(pages, id)
      return page === undefined ? undefined : `#${anchor(page)}`
    },
    procedureNumber: (id) => placeOf(id),
  })
  return {
    pen,
    drawings: renderDrawings(manual, words),
    common: new Set(common),
    placeOf: (id, method) => html(placeOf(id, method)),
  }
}

/** Parts say their names where a page has several procedures or plans. */
function headedBy({ title, parts }: FieldBookPage): Pick<Setter, 'title' | 'named'> {
  const whole = parts.flatMap((p) =>
    p.kind === 'procedure' ? p.procedure.id : p.kind === 'plan' ? p.plan.id : [],
  )
  return { title, named: new Set(whole).size > 1 }
}

/** Words on the page with the warnings that all work has in common. */
function beforeWords({ pages }: ManualBooklet, words: Words): Html {
  const page = pages.find((p) => p.parts.some((part) => part.kind === 'cautions'))
  // As long as it will be, so that the page is laid out with room for it.
  const without = fill(words.fieldBook.before, { page: '–' })
  return html(page ? slot(page.id, words.fieldBook.before, without) : '')
}

type Rendered = { readonly css: string; readonly body: string }

/**
 * A booklet as one document, `css` and `body`: a section `.leaf` for each page, of which the printer
 * makes as many pages as its type needs, and fills in their numbers.
 * @param covered Whether it has a cover, with its contents, and pages for notes.
 */
function renderBooklet(
  book: ManualBooklet,
  manual: Manual,
  assets: RenderAssets,
  covered: boolean,
): Rendered {
  const { words } = assets
  const [width, height] = foldedLengths(manual.facility.paper)
  const setter = bookletSetter(book, manual, words)
  const data = {
    words,
    covered,
    facility: manual.facility,
    material: words.materials[manual.facility.material],
    date: manual.date,
    emergency: { number: manual.emergency.number, radio: manual.emergency.radio },
    cover: html(setter.drawings.plan?.at('side') ?? ''),
    before: beforeWords(book, words),
    pages: book.pages.map((page) => ({
      id: anchor(page.id),
      title: page.title,
      spare: page.spare,
      rest: restOf(page, manual, words),
      blocks: page.parts.flatMap((part) => partBlocks(part, { ...setter, ...headedBy(page) })),
    })),
  }
  return {
    css: `@page{size:${width} ${height};margin:0}:root{--page-width:${width};--page-height:${height}}\n${stylesOf(assets, 'shared', 'emergency', 'field-book', 'field-book-parts')}`,
    body: createTemplates(assets.templates).render('field-book', data),
  }
}

/** The field book, with its cover. */
export const renderFieldBook = (manual: Manual, assets: RenderAssets): Rendered =>
  renderBooklet(manual.fieldBook, manual, assets, true)

/** The volunteers' handout: its pages alone. */
export const renderHandout = (manual: Manual, assets: RenderAssets): Rendered =>
  renderBooklet(manual.handout, manual, assets, false)
