import type { Manual } from '../../model/manual.ts'
import { fill } from '../../model/pattern.ts'
import type { Words } from '../../validate/schemas/words.ts'
import { type DrawingMedium, drawingFigure } from '../drawings/drawing-figure.ts'
import { type Drawings, drawingNamed } from '../drawings/drawings.ts'
import { type DrawingHome, drawingHomes } from '../drawings/homes.ts'
import { escapeHtml } from '../text/escape-html.ts'
import { type Html, html } from '../text/html.ts'

/**
 * Id of the place where a drawing stands first in a document: what a list of drawings points to.
 */
export const drawingPlace = (id: string): string => `drawing-${id}`

/** Prints a drawing by its id; nothing where there is none. */
export type DrawingPrinter = (id: string | undefined) => Html

/** Names a drawing where a step needs it; nothing where there is none. */
export type DrawingCiter = (id: string | undefined) => Html

const nothing = html('')

/**
 * One printer for each document: a drawing gets its id where it is printed first, and only there.
 */
export function createDrawingPrinter(drawings: Drawings, medium: DrawingMedium): DrawingPrinter {
  const placed = new Set<string>()
  return (id) => {
    const drawing = drawingNamed(drawings, id)
    if (id === undefined || !drawing) return nothing
    const figure = drawingFigure(drawing, medium)
    if (placed.has(id)) return figure
    placed.add(id)
    return html(`<div class="drawing-place" id="${drawingPlace(id)}">${figure}</div>`)
  }
}

/** The same, but each drawing once. */
export function printingOnce(print: DrawingPrinter): DrawingPrinter {
  const printed = new Set<string>()
  return (id) => {
    if (id === undefined || printed.has(id)) return nothing
    printed.add(id)
    return print(id)
  }
}

const cited = (said: string, href?: string): Html =>
  html(
    href === undefined
      ? `<span class="cite">${escapeHtml(said)}</span>`
      : `<a class="cite" href="${href}">${escapeHtml(said)}</a>`,
  )

/** Cites the one drawing that stands on the same page, where nothing leads anywhere. */
export const citeBeside =
  (drawings: Drawings, shown: string | undefined): DrawingCiter =>
  (id) => {
    const drawing = id === shown ? drawingNamed(drawings, id) : undefined
    return drawing ? cited(drawing.called) : nothing
  }

/** Cites of a procedure: with the place of a drawing that stands elsewhere in the binder. */
export function citeInBinder(
  drawings: Drawings,
  homes: ReadonlyMap<string, DrawingHome>,
  words: Words,
  procedure: string,
): DrawingCiter {
  const said = (drawing: string, home: DrawingHome): string => {
    if (home.kind === 'front') return fill(words.drawing.front, { drawing })
    if (home.kind === 'procedure' && home.id === procedure) return drawing
    const place = home.kind === 'plan' ? home.title : home.number
    return fill(words.drawing.elsewhere, { drawing, place })
  }
  return (id) => {
    const drawing = drawingNamed(drawings, id)
    const home = homes.get(id ?? '')
    if (id === undefined || !drawing || !home) return nothing
    return cited(said(drawing.called, home), `#${drawingPlace(id)}`)
  }
}

/** Where the site shows what the binder prints in front. */
const frontPage = 'facility'

/**
 * Cites drawings on a page of the site, with the way to the page where each stands.
 * @param at The way from the page at hand up to the first one, and the procedure that it shows.
 */
export function citeOnSite(
  drawings: Drawings,
  manual: Manual,
  words: Words,
  at: { readonly up: string; readonly procedure?: string },
): DrawingCiter {
  const homes = drawingHomes(manual)
  const pageOf = (home: DrawingHome): { readonly place: string; readonly page: string } => {
    if (home.kind === 'plan') return { place: home.title, page: `plans/${home.id}` }
    if (home.kind === 'front')
      return { place: words.pages[frontPage]?.title ?? '', page: frontPage }
    const title = manual.procedures.find((p) => p.id === home.id)?.title
    return { place: title ?? home.number, page: `procedures/${home.id}` }
  }
  return (id) => {
    const drawing = drawingNamed(drawings, id)
    const home = homes.get(id ?? '')
    if (id === undefined || !drawing) return nothing
    const anchor = `#${drawingPlace(id)}`
    if (!home || (home.kind === 'procedure' && home.id === at.procedure))
      return cited(drawing.called, anchor)
    const { place, page } = pageOf(home)
    return cited(
      fill(words.drawing.elsewhere, { drawing: drawing.called, place }),
      `${at.up}${page}.html${anchor}`,
    )
  }
}

/**
 * Prints and cites drawings on a procedure's page of the site. As in the binder each stands once, on
 * the page of the procedure or the plan that has it, or of the track; a phone would keep it many
 * times otherwise.
 */
export function drawingsOnPage(
  drawings: Drawings,
  manual: Manual,
  words: Words,
  procedure: Manual['procedures'][number],
): { readonly draw: DrawingPrinter; readonly cite: DrawingCiter } {
  const homes = drawingHomes(manual)
  const print = printingOnce(createDrawingPrinter(drawings, 'screen'))
  return {
    draw: (id) => {
      const home = homes.get(id ?? '')
      return home?.kind === 'procedure' && home.id === procedure.id ? print(id) : nothing
    },
    cite: citeOnSite(drawings, manual, words, { up: '../', procedure: procedure.id }),
  }
}
