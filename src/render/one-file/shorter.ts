/** What a style says of a drawing as well as its attributes do: the same words, no units. */
const styled = 'fill|stroke|stroke-width|stroke-linejoin|stroke-linecap|text-anchor|font-weight'

const attributes = new RegExp(`(?: (?:${styled})="[^"]*")+`)

/** What is said less often stays where it stands. */
const often = 8

/** `fill:none;stroke:var(--ink)` for ` fill="none" stroke="var(--ink)"`. */
const declarations = (said: string): string =>
  [...said.matchAll(/ ([a-z-]+)="([^"]*)"/g)].map(([, name, value]) => `${name}:${value}`).join(';')

/**
 * The same drawings in fewer characters: what many of their lines say in the same attributes, they
 * say in a class.
 * @returns the text, and the style that it needs.
 */
export function shorterDrawings(text: string): { readonly text: string; readonly css: string } {
  const times = new Map<string, number>()
  const inDrawings = (change: (said: string) => string): string =>
    text.replace(/<(?:path|line|rect|circle|text|g) [^>]*>/g, (tag) =>
      tag.includes(' class=') ? tag : tag.replace(attributes, change),
    )
  inDrawings((said) => {
    times.set(said, (times.get(said) ?? 0) + 1)
    return said
  })
  const common = [...times].filter(([, count]) => count >= often).map(([said]) => said)
  const name = (said: string): string => `s${common.indexOf(said)}`
  return {
    text: inDrawings((said) => (common.includes(said) ? ` class="${name(said)}"` : said)),
    css: common.map((said) => `.${name(said)}{${declarations(said)}}`).join('\n'),
  }
}

const ends =
  /<\/(?:t[dh]>(?=\s*(?:<t[dh][ >]|<\/tr>))|tr>(?=\s*(?:<tr[ >]|<\/(?:tbody|thead|table)>))|li>(?=\s*(?:<li[ >]|<\/[uo]l>)))/g

/**
 * The same lists and tables without those ends of rows, cells and items that readers of HTML put in
 * by themselves (HTML Standard, 13.1.2.4, optional tags).
 */
export const withoutEnds = (text: string): string => text.replace(ends, '')

/**
 * The same formulas without what nobody sees: the style of the file sets all as formulas that stand
 * alone, and what an operator is there for changes no sign (W3C, MathML Core: `fence`, `separator`).
 */
export const formulasByStyle = (text: string): string =>
  text
    .replaceAll('<math displaystyle="true">', '<math>')
    .replace(/(?<=<mo(?: [a-z]+="[^"]*")*) (?:fence|separator)="true"/g, '')
