import { escapeHtml, type Html, html } from '../text/html.ts'
import type { Drawing } from './drawing.ts'

/**
 * A drawing with its caption.
 * @param medium On paper the figure is a group, without which the browser drops the drawing's text
 * alternative from the PDF; on screen a figure with a caption may have no role of its own.
 */
export function drawingFigure(d: Drawing, medium: 'paper' | 'screen'): Html {
  // On a phone a wide drawing is moved sideways rather than read with a glass.
  const shown =
    medium === 'screen' && !d.small
      ? `<div class="wide" tabindex="0" role="group" aria-label="${escapeHtml(d.title)}">${d.svg}</div>`
      : d.svg
  return html(
    `<figure class="drawing${d.small ? ' side-size' : ''}"${medium === 'paper' ? ' role="group"' : ''}>${shown}<figcaption>${escapeHtml(d.caption)}</figcaption></figure>`,
  )
}
