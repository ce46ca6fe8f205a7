import { escapeHtml, type Html, html } from '../text/html.ts'
import type { Drawing } from './drawing.ts'

/**
 * Where a drawing is shown: across a page, on a page of the field book, in the side column of a
 * posted sheet, on a screen.
 */
export type DrawingMedium = 'paper' | 'column' | 'side' | 'screen'

/**
 * On a screen. What is laid out for several widths is shown in the widest that fits, by style alone;
 * another wide drawing is moved sideways on a phone rather than read with a glass.
 */
function onScreen(d: Drawing): string {
  if (d.at !== undefined)
    return `<div class="on-wide">${d.at('page')}</div><div class="on-narrow">${d.at('side')}</div>`
  return d.small
    ? d.svg
    : `<div class="wide" tabindex="0" role="group" aria-label="${escapeHtml(d.title)}">${d.svg}</div><p class="slide">${escapeHtml(d.slide)}</p>`
}

function onPaper(d: Drawing, medium: Exclude<DrawingMedium, 'screen'>): string {
  if (d.at !== undefined) return d.at(medium === 'paper' ? 'page' : medium)
  return medium === 'paper' ? d.svg : d.narrow
}

/**
 * A drawing with its number and caption. On paper the figure is a group, without which the browser
 * drops the drawing's text alternative from the PDF; on screen a figure with a caption may have no
 * role of its own.
 */
export function drawingFigure(d: Drawing, medium: DrawingMedium): Html {
  const shown = medium === 'screen' ? onScreen(d) : onPaper(d, medium)
  const role = medium === 'screen' ? '' : ' role="group"'
  const kind = d.at !== undefined ? ' true-size' : d.small ? ' side-size' : ''
  const caption = `<b>${escapeHtml(d.called)}.</b> ${escapeHtml(d.caption)}`
  return html(
    `<figure class="drawing${kind}"${role}>${shown}<figcaption>${caption}</figcaption></figure>`,
  )
}
