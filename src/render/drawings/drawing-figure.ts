import { escapeHtml } from '../text/escape-html.ts'
import { type Html, html } from '../text/html.ts'
import type { Drawing } from './drawing.ts'

/**
 * Where a drawing is shown: across a page, on a page of the field book, in the side column of a
 * posted sheet, on a screen of any width, on any screen as on a phone's.
 */
export type DrawingMedium = 'paper' | 'column' | 'side' | 'screen' | 'phone'

/** On a screen the widest that fits is shown, by style alone. */
const laidOnScreen = (d: Drawing): string =>
  `<div class="on-wide">${d.onScreen('page')}</div><div class="on-narrow">${d.onScreen('side')}</div>`

/** How a drawing is laid out for a medium. */
function laid(d: Drawing, medium: DrawingMedium): string {
  if (medium === 'screen') return laidOnScreen(d)
  if (medium === 'phone') return `<div class="drawn">${d.onScreen('side')}</div>`
  return d.at(medium === 'paper' ? 'page' : medium)
}

/**
 * A drawing with its number and caption. On paper the figure is a group, without which the browser
 * drops the drawing's text alternative from the PDF; on screen a figure with a caption may have no
 * role of its own.
 */
export function drawingFigure(d: Drawing, medium: DrawingMedium): Html {
  const isOnScreen = medium === 'screen' || medium === 'phone'
  const role = isOnScreen ? '' : ' role="group"'
  const caption = `<b>${escapeHtml(d.called)}.</b> ${escapeHtml(d.caption)}`
  return html(
    `<figure class="drawing"${role}>${laid(d, medium)}<figcaption>${caption}</figcaption></figure>`,
  )
}
