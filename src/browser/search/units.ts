import { type SearchIndex, searchWords } from '../../model/search.ts'
import { alike, roughlyAlike } from './match.ts'
import { wordList } from './word-list.ts'

/** One way of saying what is looked for: all of its words, and how much it counts. */
type Saying = { readonly words: readonly string[]; readonly counts: number }

/** One thing that is looked for, in the words that were typed and in others for the same. */
export type Unit = readonly Saying[]

/** Another word for the same counts less than the word that was typed. */
const another = 0.75

const startsWith = (words: readonly string[], at: number, phrase: readonly string[]): boolean =>
  phrase.every((word, i) => words[at + i] === word)

/** Words as phrases spell them, where neither they nor the manual have one as it was typed. */
function spelt(typed: readonly string[], index: SearchIndex): readonly string[] {
  const { inPhrases, has } = wordList(index)
  return typed.map((word) => {
    if (inPhrases.has(word) || has.has(word)) return word
    const near = [...inPhrases].map((w) => ({
      w,
      how: Math.max(alike(word, w), roughlyAlike(word, w)),
    }))
    const best = near.reduce((a, b) => (b.how > a.how ? b : a), { w: word, how: 0 })
    return best.how >= 0.6 ? best.w : word
  })
}

/** A query in units: the longest phrases that have others for the same, and the words between. */
export function unitsOf(query: string, index: SearchIndex): readonly Unit[] {
  const { same, silent } = index
  const typed = searchWords(query)
  const near = spelt(typed, index)
  const telling = (words: readonly string[]): readonly string[] =>
    words.filter((word) => !silent.includes(word))
  const units: Unit[] = []
  for (let at = 0; at < typed.length; ) {
    const groups = same.filter((group) => group.some((phrase) => startsWith(near, at, phrase)))
    const length = Math.max(
      1,
      ...groups.flat().map((phrase) => (startsWith(near, at, phrase) ? phrase.length : 0)),
    )
    const own = typed.slice(at, at + length)
    const called = near.slice(at, at + length)
    const others = groups
      .filter((group) => group.some((p) => p.length === length && startsWith(near, at, p)))
      .flat()
      .filter((phrase) => phrase.join(' ') !== called.join(' '))
    const unit = [own, ...(called.join(' ') === own.join(' ') ? [] : [called]), ...others]
      .map((words, i) => ({ words: telling(words), counts: i === 0 ? 1 : another }))
      .filter(({ words }) => words.length > 0)
    if (unit.length > 0) units.push(unit)
    at += length
  }
  return units
}
