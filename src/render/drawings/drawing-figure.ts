import { escapeHtml, type Html, html } from '../text/html.ts'
import type { Drawing } from './drawing.ts'

/** Where a drawing is shown: across a page, in a narrow column on paper, on a screen. */
export type DrawingMedium = 'paper' | 'narrow' | 'screen'

/**
 * A drawing with its number and caption. On paper the figure is a group, without which the browser
 * drops the drawing's text alternative from the PDF; on screen a figure with a caption may have no
 * role of its own.
 */
export function drawingFigure(d: Drawing, medium: DrawingMedium): Html {
  const svg = medium === 'narrow' ? d.narrow : d.svg
  // On a phone a wide drawing is moved sideways rather than read with a glass.
  const shown =
    medium === 'screen' && !d.small
      ? `<div class="wide" tabindex="0" role="group" aria-label="${escapeHtml(d.title)}">${svg}</div>`
      : svg
  const role = medium === 'screen' ? '' : ' role="group"'
  const caption = `<b>${escapeHtml(d.called)}.</b> ${escapeHtml(d.caption)}`
  return html(
    `<figure class="drawing${d.small ? ' side-size' : ''}"${role}>${shown}<figcaption>${caption}</figcaption></figure>`,
  )
}
