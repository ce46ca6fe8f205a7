import { escapeHtml, html, type Html } from '../text/html.ts'

/** A drawing with what to see in it; `alt` says the same to those who do not see it. */
export type Drawing = { readonly svg: string; readonly alt: string; readonly caption: string; /** Made to be read at the width of a sheet's side column. */ readonly small: boolean }

/** A drawing as a figure that keeps its text alternative in a PDF. */
export const drawingFigure = (d: Drawing): Html => html(`<figure class="drawing${d.small ? ' side-size' : ''}" role="group">${d.svg}<figcaption>${escapeHtml(d.caption)}</figcaption></figure>`)
