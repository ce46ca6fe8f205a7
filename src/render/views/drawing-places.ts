import { drawingFigure } from '../drawings/drawing-figure.ts'
import { type Drawings, drawingNamed } from '../drawings/drawings.ts'
import { type Html, html } from '../text/html.ts'

/**
 * Id of the place where a drawing stands first in a document: what a list of drawings points to.
 */
export const drawingPlace = (id: string): string => `drawing-${id}`

/** Prints a drawing by its id; nothing where there is none. */
export type DrawingPrinter = (id: string | undefined) => Html

/**
 * One printer for each document: a drawing gets its id where it is printed first, and only there.
 */
export function createDrawingPrinter(
  drawings: Drawings,
  medium: 'paper' | 'screen',
): DrawingPrinter {
  const placed = new Set<string>()
  return (id) => {
    const drawing = drawingNamed(drawings, id)
    if (id === undefined || !drawing) return html('')
    const figure = drawingFigure(drawing, medium)
    if (placed.has(id)) return figure
    placed.add(id)
    return html(`<div class="drawing-place" id="${drawingPlace(id)}">${figure}</div>`)
  }
}
