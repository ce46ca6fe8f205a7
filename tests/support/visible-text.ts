/** Attributes that people hear or see. */
const spoken = /\s(?:alt|title|aria-label|data-tip|placeholder)="([^"]*)"/g

const entities: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  nbsp: ' ',
  quot: '"',
  '#39': "'",
  '#x27': "'",
  '#x60': '`',
  '#x3D': '=',
}

const decoded = (text: string): string =>
  text.replace(/&([a-z]+|#\w+);/gi, (all, name: string) => entities[name] ?? all)

/**
 * Everything of a page that somebody reads or hears: its text, what attributes say, and of formulas
 * the words and units.
 */
export function visibleText(page: string): readonly string[] {
  const html = page
    .replace(/<(style|script|math)\b[\s\S]*?<\/\1>/g, '')
    .replace(/<!--[\s\S]*?-->/g, '')
  const attributes = [...html.matchAll(spoken)].map((m) => m[1] ?? '')
  const inFormulas = [...page.matchAll(/<mtext>([^<]*)<\/mtext>/g)].map((m) => m[1] ?? '')
  return [...attributes, ...inFormulas, ...html.split(/<[^>]*>/)]
    .map((text) => decoded(text).trim())
    .filter((text) => text !== '')
}
