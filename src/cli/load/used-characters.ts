import { beyondLatin } from './faces.ts'

/** What is shown somewhere, as text in which each character stands once, in order. */
export type UsedCharacters = {
  /** In formulas; empty where there are none. */
  readonly formulas: string
  /** Those that Latin files have. */
  readonly latin: string
  /** Others that are no letters of a language: arrows, daggers, eighths, signs of quantities. */
  readonly signs: string
  /** Letters of other languages. */
  readonly letters: string
}

const isBeyondLatin = ((): ((code: number) => boolean) => {
  const ranges = beyondLatin.split(',').map((range) => {
    const [from = '', to = from] = range.replace('U+', '').split('-')
    return [Number.parseInt(from, 16), Number.parseInt(to, 16)] as const
  })
  return (code) => ranges.some(([from, to]) => code >= from && code <= to)
})()

/** What can be typed, or worked out in a page, is never missing. */
const typed = String.fromCodePoint(...Array.from({ length: 0x7f - 0x20 }, (_, i) => 0x20 + i))

/** First letters of the alphabets that have an italic for formulas (Unicode, block 1D400). */
const italics = [
  { from: 'A', count: 26, italic: 0x1d434 },
  { from: 'a', count: 26, italic: 0x1d44e },
  { from: 'Α', count: 25, italic: 0x1d6e2 },
  { from: 'α', count: 25, italic: 0x1d6fc },
] as const

/** A browser sets a letter that stands alone in italic; that of h is Planck's. */
const italicOf = (letter: string): string => {
  if (letter === 'h') return 'ℎ'
  const code = letter.codePointAt(0) ?? 0
  const own = italics.find(({ from, count }) => {
    const place = code - (from.codePointAt(0) ?? 0)
    return place >= 0 && place < count
  })
  return own ? String.fromCodePoint(own.italic + code - (own.from.codePointAt(0) ?? 0)) : ''
}

/** What not everybody can type: a few thousand units of the millions that a site has. */
const rare = /[\u0080-\uffff]+/g

/** The same outside tags. */
const rareWords = /[\u0080-\uffff]+(?![^<>]*>)/g

function see(seen: Set<string>, text: string, wanted: RegExp): void {
  for (const run of text.match(wanted) ?? []) for (const character of run) seen.add(character)
}

const [formulaStart, formulaEnd] = ['<math', '</math>']

/** What texts hold beside all that can be typed, in formulas and elsewhere. Nothing of them is copied. */
function seenIn(texts: readonly string[]) {
  const [formulas, shown] = [new Set<string>(), new Set<string>()]
  let hasFormulas = false
  for (const text of texts) {
    let at = 0
    for (;;) {
      const start = text.indexOf(formulaStart, at)
      const end = start === -1 ? -1 : text.indexOf(formulaEnd, start)
      if (end === -1) break
      see(shown, text.slice(at, start), rare)
      at = end + formulaEnd.length
      const formula = text.slice(start, at)
      hasFormulas ||= />[^<]/.test(formula)
      see(formulas, formula, rareWords)
    }
    see(shown, text.slice(at), rare)
  }
  return { formulas, shown, hasFormulas }
}

const withTyped = (seen: ReadonlySet<string>): readonly string[] => [...typed, ...seen].sort()

/**
 * Characters that pages, scripts and styles hold.
 * @param texts Files of a site.
 */
export function usedCharacters(texts: readonly string[]): UsedCharacters {
  const seen = seenIn(texts)
  const isBeyond = (c: string): boolean => isBeyondLatin(c.codePointAt(0) ?? 0)
  // Greek letters stand for quantities, and STIX has them.
  const isLetter = (c: string): boolean => /[\p{L}\p{M}]/u.test(c) && !/\p{Script=Greek}/u.test(c)
  const [letters, shown] = [withTyped(seen.formulas), withTyped(seen.shown)]
  return {
    formulas: seen.hasFormulas ? [...letters, ...letters.map(italicOf)].join('') : '',
    latin: shown.filter((c) => !isBeyond(c)).join(''),
    signs: shown.filter((c) => isBeyond(c) && !isLetter(c)).join(''),
    letters: shown.filter((c) => isBeyond(c) && isLetter(c)).join(''),
  }
}
