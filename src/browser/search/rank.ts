import type { SearchIndex } from '../../model/search.ts'
import { alike, roughlyAlike } from './match.ts'
import { type Unit, unitsOf } from './units.ts'
import { wordList } from './word-list.ts'

/** A result: its place among the entries, and the words of the manual that led to it. */
export type Hit = {
  readonly entry: number
  readonly score: number
  readonly words: readonly string[]
}

type Score = { score: number; words: Set<string> }

/**
 * Words of the manual that fit one that was typed; misspelt ones only where nothing else fits. Other
 * words for the same are spelt as the manual spells them.
 */
function fitting(
  typed: string,
  index: SearchIndex,
  isTyped: boolean,
): readonly (readonly [number, number])[] {
  const { beginning, places } = wordList(index)
  const found = (by: typeof alike, among: readonly number[]) =>
    among.flatMap((place) => {
      const how = by(typed, index.words[place] ?? '')
      return how > 0 ? [[place, how] as const] : []
    })
  const exact = found(alike, beginning.get(typed[0] ?? '') ?? [])
  return !isTyped || exact.some(([, how]) => how >= 0.75)
    ? exact
    : [...exact, ...found(roughlyAlike, places)]
}

/** What one word says of each entry. */
function scoresOf(typed: string, index: SearchIndex, isTyped: boolean): Map<number, Score> {
  const { words, found, entries } = index
  const scores = new Map<number, Score>()
  for (const [at, how] of fitting(typed, index, isTyped)) {
    const list = found[at] ?? []
    const rare = Math.log(1 + entries.length / (list.length / 2))
    let entry = 0
    for (let i = 0; i < list.length; i += 2) {
      entry += list[i] ?? 0
      const score = how * rare * (list[i + 1] ?? 0)
      const before = scores.get(entry)
      if (before === undefined || before.score < score)
        scores.set(entry, { score, words: new Set([words[at] ?? '']) })
    }
  }
  return scores
}

/** What the best way of saying a thing says of each entry. */
function unitScores(unit: Unit, index: SearchIndex): Map<number, Score> {
  const best = new Map<number, Score>()
  for (const { words, counts } of unit) {
    const sum = new Map<number, Score & { met: number }>()
    for (const word of words)
      for (const [entry, found] of scoresOf(word, index, counts === 1)) {
        const before = sum.get(entry) ?? { score: 0, words: new Set<string>(), met: 0 }
        before.score += found.score / words.length
        before.met++
        for (const w of found.words) before.words.add(w)
        sum.set(entry, before)
      }
    for (const [entry, { score, words: led, met }] of sum) {
      // Half a phrase is often something else.
      const whole = score * counts * (met / words.length)
      if (whole > (best.get(entry)?.score ?? 0)) best.set(entry, { score: whole, words: led })
    }
  }
  return best
}

/**
 * Entries that fit a query, the best first. One that has all that was typed goes before others that
 * have some of it.
 */
export function rank(query: string, index: SearchIndex): readonly Hit[] {
  const units = unitsOf(query, index)
  const sums = new Map<number, Score & { met: number }>()
  for (const unit of units)
    for (const [entry, found] of unitScores(unit, index)) {
      const before = sums.get(entry) ?? { score: 0, words: new Set<string>(), met: 0 }
      before.score += found.score
      before.met++
      for (const w of found.words) before.words.add(w)
      sums.set(entry, before)
    }
  return [...sums]
    .map(([entry, { score, words, met }]) => ({
      entry,
      score: score * (met / units.length) ** 1.5,
      words: [...words],
    }))
    .sort((a, b) => b.score - a.score || a.entry - b.entry)
}
