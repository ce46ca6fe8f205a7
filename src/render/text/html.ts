import Handlebars from 'handlebars'

/**
 * HTML that this project made itself or sanitised; the only kind of text that templates print as it
 * is.
 */
export type Html = Handlebars.SafeString

export const html = (text: string): Html => new Handlebars.SafeString(text)

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/** Plain text for HTML or SVG, also inside quoted attributes. */
export const escapeHtml = (text: string): string =>
  text.replace(/[&<>"']/g, (c) => entities[c] ?? c)
