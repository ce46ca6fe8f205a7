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
