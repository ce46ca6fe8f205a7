import { type SearchEntry, searchWords } from '../../model/search.ts'

/** The line of a result that has most of the words that led to it; else its first. */
export function bestLine([, , , ...lines]: SearchEntry, words: readonly string[]): string {
  const met = (line: string): number => {
    const own = new Set(searchWords(line))
    return words.filter((word) => own.has(word)).length
  }
  return lines.reduce((best, line) => (met(line) > met(best) ? line : best), lines[0] ?? '')
}

/** A text in pieces, every other one of which led to it. */
export const marked = (text: string, words: readonly string[]): readonly string[] => {
  const pieces = ['']
  for (const piece of text.split(/(\p{L}-\d+|\p{L}+|\d+)/u)) {
    const led = words.includes(searchWords(piece)[0] ?? '')
    if (led === (pieces.length % 2 === 0)) pieces[pieces.length - 1] += piece
    else pieces.push(piece)
  }
  return pieces
}
