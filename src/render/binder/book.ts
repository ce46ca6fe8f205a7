import type { ManualReckoner } from '../../model/manual/reckoner.ts'
import type { Manual } from '../../model/manual.ts'
import type { RenderAssets } from '../assets.ts'
import { type Drawings, drawingNamed, renderDrawings } from '../drawings/drawings.ts'
import { drawingHomes, patternsOf } from '../drawings/homes.ts'
import { type Html, html } from '../text/html.ts'
import {
  citeInBinder,
  createDrawingPrinter,
  type DrawingPrinter,
  drawingPlace,
  printingOnce,
} from '../views/drawing-places.ts'
import { createPen, type Pen } from '../views/pen.ts'
import { type ReckonerView, reckonerView } from '../views/reckoner-view.ts'
import type { DrawingsHere } from '../views/step-view.ts'
import { type BackPart, backPartsOf } from './divided-parts.ts'

/** What all parts of a binder are made from. */
export type Book = {
  readonly manual: Manual
  readonly words: RenderAssets['words']
  readonly pen: Pen
  /** Drawings before they are placed, for the cover. */
  readonly drawings: Drawings
  /** Prints a drawing wherever it is asked for. */
  readonly draw: DrawingPrinter
  /** Prints those of a procedure that stand in no other place, and cites all. */
  readonly drawingsOf: (procedure: string) => DrawingsHere
  /** Drawings printed so far, as the list at the front has them: by their numbers. */
  readonly drawn: () => readonly {
    readonly place: string
    readonly number: number
    readonly title: string
  }[]
  readonly reckoner: (r: ManualReckoner) => ReckonerView
  /** Numbered parts behind the sections. */
  readonly back: readonly BackPart[]
  /** What every template is given. */
  readonly shared: object
}

/** Printers that know which drawings the book has so far. */
function printersOf(
  drawings: Drawings,
  manual: Manual,
  words: RenderAssets['words'],
): Pick<Book, 'draw' | 'drawingsOf' | 'drawn'> {
  const print = createDrawingPrinter(drawings, 'paper')
  const printed = new Set<string>()
  const homes = drawingHomes(manual)
  const noting =
    (printer: DrawingPrinter): DrawingPrinter =>
    (name) => {
      if (name !== undefined) printed.add(name)
      return printer(name)
    }
  const draw = noting(print)
  const once = printingOnce(draw)
  const aside = noting(createDrawingPrinter(drawings, 'side'))
  /** Patterns of one procedure, all with the first of them. */
  const together = (names: readonly string[]): Html =>
    html(`<div class="abreast-drawings">${names.map(aside).join('')}</div>`)
  return {
    draw,
    drawingsOf: (procedure) => ({
      draw: (name) => {
        const home = homes.get(name ?? '')
        if (home?.kind !== 'procedure' || home.id !== procedure) return once(undefined)
        const patterns = patternsOf(homes, procedure)
        if (name === undefined || !patterns.includes(name)) return once(name)
        return name === patterns[0] && !printed.has(name) ? together(patterns) : once(undefined)
      },
      cite: citeInBinder(drawings, homes, words, procedure),
    }),
    drawn: () =>
      [...printed]
        .flatMap((name) => {
          const drawing = drawingNamed(drawings, name)
          return drawing
            ? [{ place: drawingPlace(name), number: drawing.number, title: drawing.title }]
            : []
        })
        .sort((a, b) => a.number - b.number),
  }
}

/** On paper a link leads inside the book, and a procedure is named with its number. */
const penOf = (manual: Manual, words: RenderAssets['words']): Pen =>
  createPen(manual, words, 'paper', {
    worksheetHref: (id) => `#worksheet-${id}`,
    procedureHref: (id) =>
      manual.procedures.some((p) => p.id === id) ? `#procedure-${id}` : undefined,
    procedureNumber: (id) => manual.procedures.find((p) => p.id === id)?.number,
  })

export function openBook(manual: Manual, words: RenderAssets['words']): Book {
  const pen = penOf(manual, words)
  const drawings = renderDrawings(manual, words)
  const back = backPartsOf(manual, words)
  const reckonersAt = back.find((b) => b.id === 'reckoners')?.number
  const placeOf = (r: ManualReckoner): number =>
    manual.reckoners.findIndex((other) => other.id === r.id) + 1
  return {
    manual,
    words,
    pen,
    drawings,
    ...printersOf(drawings, manual, words),
    reckoner: (r) => reckonerView(r, pen, `${reckonersAt}.${placeOf(r)}`),
    back,
    // Headings of shared parts stand two levels below that of their section.
    shared: {
      sub: 'h3',
      words,
      facility: manual.facility,
      date: manual.date,
      twoSides: manual.facility.binder.sides === 2,
    },
  }
}
