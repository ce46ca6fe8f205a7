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

/** What is asked for, and what was asked for before that became too much. */
const now = empty()
const older = empty()
let earlier: Remembered = empty()
let asked: (() => Remembered | undefined) | undefined

/** What the same program has made before, taken when it is first of use. */
function before(): Remembered {
  earlier = asked?.() ?? earlier
  asked = undefined
  return earlier
}

/** So many texts of a kind are kept for other commands. */
const most = 8000

/** So many this process holds before it lets go of the older ones; a manual has some hundreds. */
const mostHeld = 2000

/** A program that makes many manuals forgets what none of the last ones has asked for. */
function keep(kind: Kind, text: string, made: string): void {
  now[kind].set(text, made)
  if (now[kind].size < mostHeld) return
  older[kind] = now[kind]
  now[kind] = new Map()
}

/** The same function, which makes of the same text the same only once. */
export const rememberOf =
  (kind: Kind, make: (text: string) => string) =>
  (text: string): string => {
    const known = now[kind].get(text)
    if (known !== undefined) return known
    const made = older[kind].get(text) ?? before()[kind].get(text) ?? make(text)
    keep(kind, text, made)
    return made
  }

/** Lets texts be taken from what the same program has made before. */
export function recall(made: () => Remembered | undefined): void {
  asked = made
}

/** What was made of texts, and whether any of it is new since the program has started. */
export function remembered(): { readonly all: Remembered; readonly isNew: boolean } {
  const isNew = kinds.some((kind) =>
    [...now[kind].keys()].some((text) => !before()[kind].has(text)),
  )
  const together = (kind: Kind): ReadonlyMap<string, string> => {
    const own = new Map([...older[kind], ...now[kind]])
    const all = new Map([...earlier[kind], ...own])
    return all.size > most ? own : all
  }
  const all = {
    formulas: together('formulas'),
    texts: together('texts'),
    templates: together('templates'),
    ovals: together('ovals'),
  }
  return { all, isNew }
}
