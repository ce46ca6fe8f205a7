/** What a style says of a drawing as well as its attributes do: the same words, no units. */
const styled = 'fill|stroke|stroke-width|stroke-linejoin|stroke-linecap|text-anchor|font-weight'

const attributes = new RegExp(`(?: (?:${styled})="[^"]*")+`)

/** What is said less often stays where it stands. */
const often = 8

/** `fill:none;stroke:var(--ink)` for ` fill="none" stroke="var(--ink)"`. */
const declarations = (said: string): string =>
  [...said.matchAll(/ ([a-z-]+)="([^"]*)"/g)].map(([, name, value]) => `${name}:${value}`).join(';')

/** Parts of drawings that are drawn or group others. */
const drawn = /<(?:path|line|rect|circle|text|g) [^>]*>/g

/**
 * The same drawings in fewer characters: what many of their lines say in the same attributes, they
 * say in a class.
 * @returns the text, and the style that it needs.
 */
export function shorterDrawings(text: string): { readonly text: string; readonly css: string } {
  const places = new Map<string, number[]>()
  // What is said stands in every other part.
  const parts: string[] = []
  let last = 0
  for (const { 0: tag, index } of text.matchAll(drawn)) {
    const found = tag.includes(' class=') ? undefined : attributes.exec(tag)
    if (!found) continue
    const [said] = found
    const known = places.get(said)
    if (known) known.push(parts.length + 1)
    else places.set(said, [parts.length + 1])
    parts.push(text.slice(last, index + found.index), said)
    last = index + found.index + said.length
  }
  const common = [...places].filter(([, where]) => where.length >= often)
  for (const [i, [, where]] of common.entries())
    for (const place of where) parts[place] = ` class="s${i}"`
  return {
    text: parts.join('') + text.slice(last),
    css: common.map(([said], i) => `.s${i}{${declarations(said)}}`).join('\n'),
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
    .replace(/ (?:fence|separator)="true"(?<=<mo(?: [a-z]+="[^"]*")+)/g, '')
