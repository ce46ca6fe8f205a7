/** What is remembered of what was made of texts: formulas, running text, templates, fitted ovals. */
const kinds = ['formulas', 'texts', 'templates', 'ovals'] as const

type Kind = (typeof kinds)[number]

/** Of each kind what was made of which text. */
export type Remembered = Readonly<Record<Kind, ReadonlyMap<string, string>>>

const empty = (): Record<Kind, Map<string, string>> => ({
  formulas: new Map(),
  texts: new Map(),
  templates: new Map(),
  ovals: new Map(),
})

const now = empty()
let earlier: Remembered = empty()
let asked: (() => Remembered | undefined) | undefined

/** What the same program has made before, taken when it is first of use. */
function before(): Remembered {
  earlier = asked?.() ?? earlier
  asked = undefined
  return earlier
}

/** The same function, which makes of the same text the same only once. */
export const rememberOf =
  (kind: Kind, make: (text: string) => string) =>
  (text: string): string => {
    const known = now[kind].get(text)
    if (known !== undefined) return known
    const made = before()[kind].get(text) ?? make(text)
    now[kind].set(text, made)
    return made
  }

/** Lets texts be taken from what the same program has made before. */
export function recall(made: () => Remembered | undefined): void {
  asked = made
}

/** So many texts of a kind are remembered from other manuals too. */
const most = 8000

/** What was made of texts, and whether any of it is new since the program has started. */
export function remembered(): { readonly all: Remembered; readonly isNew: boolean } {
  const isNew = kinds.some((kind) => [...now[kind].keys()].some((text) => !earlier[kind].has(text)))
  const together = (kind: Kind): ReadonlyMap<string, string> => {
    const all = new Map([...earlier[kind], ...now[kind]])
    return all.size > most ? now[kind] : all
  }
  const all = {
    formulas: together('formulas'),
    texts: together('texts'),
    templates: together('templates'),
    ovals: together('ovals'),
  }
  return { all, isNew }
}
