import { escapeHtml } from '../text/escape-html.ts'
import { type Html, html } from '../text/html.ts'
import type { Drawing } from './drawing.ts'
import { screenSvg } from './screen-svg.ts'

/**
 * Where a drawing is shown: across a page, on a page of the field book, in the side column of a
 * posted sheet, on a screen.
 */
export type DrawingMedium = 'paper' | 'column' | 'side' | 'screen'

/** On a screen the widest that fits is shown, by style alone. */
const laidOnScreen = (d: Drawing): string =>
  `<div class="on-wide">${screenSvg(d.at('page'))}</div><div class="on-narrow">${screenSvg(d.at('side'))}</div>`

/** Several pages may show the same. */
const shown = new WeakMap<Drawing, string>()

function onScreen(d: Drawing): string {
  const laid = shown.get(d) ?? laidOnScreen(d)
  shown.set(d, laid)
  return laid
}

/**
 * A drawing with its number and caption. On paper the figure is a group, without which the browser
 * drops the drawing's text alternative from the PDF; on screen a figure with a caption may have no
 * role of its own.
 */
export function drawingFigure(d: Drawing, medium: DrawingMedium): Html {
  const drawing = medium === 'screen' ? onScreen(d) : d.at(medium === 'paper' ? 'page' : medium)
  const role = medium === 'screen' ? '' : ' role="group"'
  const caption = `<b>${escapeHtml(d.called)}.</b> ${escapeHtml(d.caption)}`
  return html(
    `<figure class="drawing"${role}>${drawing}<figcaption>${caption}</figcaption></figure>`,
  )
}
