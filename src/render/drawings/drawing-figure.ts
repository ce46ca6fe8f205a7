import { escapeHtml } from '../text/escape-html.ts'
import { type Html, html } from '../text/html.ts'
import type { Drawing } from './drawing.ts'
import { screenSvg } from './screen-svg.ts'

/**
 * Where a drawing is shown: across a page, on a page of the field book, in the side column of a
 * posted sheet, on a screen.
 */
export type DrawingMedium = 'paper' | 'column' | 'side' | 'screen'

/**
 * On a screen. What is laid out for several widths is shown in the widest that fits, by style alone;
 * another wide drawing is moved sideways on a phone rather than read with a glass.
 */
function laidOnScreen(d: Drawing): string {
  if (d.at !== undefined)
    return `<div class="on-wide">${screenSvg(d.at('page'))}</div><div class="on-narrow">${screenSvg(d.at('side'))}</div>`
  const svg = screenSvg(d.svg)
  return d.small
    ? svg
    : `<div class="wide" tabindex="0" role="group" aria-label="${escapeHtml(d.title)}">${svg}</div><p class="slide">${escapeHtml(d.slide)}</p>`
}

/** Several pages may show the same. */
const shown = new WeakMap<Drawing, string>()

function onScreen(d: Drawing): string {
  const laid = shown.get(d) ?? laidOnScreen(d)
  shown.set(d, laid)
  return laid
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
  const drawing = medium === 'screen' ? onScreen(d) : onPaper(d, medium)
  const role = medium === 'screen' ? '' : ' role="group"'
  const kind = d.at !== undefined ? ' true-size' : d.small ? ' side-size' : ''
  const caption = `<b>${escapeHtml(d.called)}.</b> ${escapeHtml(d.caption)}`
  return html(
    `<figure class="drawing${kind}"${role}>${drawing}<figcaption>${caption}</figcaption></figure>`,
  )
}
