import type { Manual } from '../../../model/manual.ts'
import { type SearchIndex, searchWords } from '../../../model/search.ts'
import type { Words } from '../../../validate/schemas/words.ts'
import type { SiteContext } from '../page.ts'
import { type Findable, type FindablesOf, kindWords } from './entry.ts'
import { findings, reckoners, worksheets } from './numbers.ts'
import { chapters, pages, papers, terms } from './pages.ts'
import { forms, hazards, plans, procedures, symptoms } from './work.ts'

/**
 * All that can be found by a kind, and how much more a result of it helps than another: people come
 * for what to do and for what they see.
 */
const ofManual = [
  { find: procedures, helps: 1.25 },
  { find: symptoms, helps: 1.2 },
  { find: plans, helps: 1 },
  { find: forms, helps: 1 },
  { find: worksheets, helps: 0.9 },
  { find: reckoners, helps: 0.95 },
  { find: terms, helps: 0.95 },
  { find: chapters, helps: 0.8 },
  { find: hazards, helps: 0.6 },
  { find: findings, helps: 0.7 },
  { find: pages, helps: 1.1 },
] as const

/** The same of what lies beside the pages. */
const ofPapers = [{ find: papers, helps: 0.9 }] as const

/** How much a word says of a result: in its title, in a line below it, elsewhere in it. */
const says = { title: 6, line: 2.5, text: 1 } as const

/** Tenths are exact enough, and short. */
const tenths = (much: number): number => Math.max(1, Math.round(much * 10))

/**
 * What each word says of one result, as a number of the index. A text that is long says less with each
 * of its words.
 * @param helps How much more the result helps than another.
 */
function wordsOf({ title, lines, text }: Findable, helps: number): ReadonlyMap<string, number> {
  const said = new Map<string, number>()
  const add = (words: readonly string[], much: number): void => {
    for (const word of words) said.set(word, Math.max(said.get(word) ?? 0, much))
  }
  const inText = text.flatMap(searchWords)
  const inTitle = searchWords(title)
  const often = new Map<string, number>()
  for (const word of inText) often.set(word, (often.get(word) ?? 0) + 1)
  for (const [word, times] of often)
    add([word], Math.min(2, (says.text * (1 + Math.log(times))) / (1 + inText.length / 600)))
  add(lines.flatMap(searchWords), says.line)
  add(inTitle, says.title * (1 + 1 / Math.max(1, inTitle.length)))
  for (const [word, much] of said) said.set(word, tenths(much * helps))
  return said
}

type Entry = {
  readonly findable: Findable
  /** What each of its words says of it. */
  readonly said: () => ReadonlyMap<string, number>
}

const entriesOf = (
  sources: readonly { readonly find: FindablesOf; readonly helps: number }[],
  site: SiteContext,
): readonly Entry[] =>
  sources.flatMap(({ find, helps }) =>
    find(site).map((findable) => {
      let said: ReadonlyMap<string, number> | undefined
      return {
        findable,
        said: () => {
          said ??= wordsOf(findable, helps)
          return said
        },
      }
    }),
  )

/** The site, its page of results and the manual in one file find the same in a manual. */
const made = new WeakMap<Manual, { readonly words: Words; readonly entries: readonly Entry[] }>()

function allEntries(site: SiteContext): readonly Entry[] {
  const { manual, words } = site
  const before = made.get(manual)
  const entries = before?.words === words ? before.entries : entriesOf(ofManual, site)
  made.set(manual, { words, entries })
  return [...entries, ...entriesOf(ofPapers, site)]
}

export const findables = (site: SiteContext): readonly Findable[] =>
  allEntries(site).map(({ findable }) => findable)

/** Everything that the search needs, as plain data. */
export function searchIndex(site: SiteContext): SearchIndex {
  const { same, silent } = site.manual.search
  const mute = new Set(silent)
  const found = new Map<string, number[]>()
  const last = new Map<string, number>()
  const entries = allEntries(site)
  for (const [at, { said }] of entries.entries())
    for (const [word, much] of said()) {
      if (mute.has(word)) continue
      const list = found.get(word) ?? []
      list.push(at - (last.get(word) ?? 0), much)
      last.set(word, at)
      found.set(word, list)
    }
  const words = [...found.keys()].sort()
  const kinds = [...new Set(entries.map(({ findable }) => findable.kind))]
  return {
    kinds: kinds.map((kind) => kindWords(site.words)[kind]),
    entries: entries.map(({ findable: { href, kind, title, lines } }) => [
      href,
      kinds.indexOf(kind),
      title,
      ...lines,
    ]),
    words,
    found: words.map((word) => found.get(word) ?? []),
    same: same.map((group) => group.map(searchWords)),
    silent,
  }
}

/** The index as a script, which a page from disk can load where it may not fetch. */
export const indexScript = (site: SiteContext): string =>
  `var manualIndex=${JSON.stringify(searchIndex(site))}\n`
