const small: ReadonlyMap<string, number> = new Map(
  Object.entries({
    one: 1,
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    seven: 7,
    eight: 8,
    nine: 9,
    ten: 10,
    eleven: 11,
    twelve: 12,
    thirteen: 13,
    fourteen: 14,
    fifteen: 15,
    sixteen: 16,
    seventeen: 17,
    eighteen: 18,
    nineteen: 19,
  }),
)
const tens: ReadonlyMap<string, number> = new Map(
  Object.entries({
    twenty: 20,
    thirty: 30,
    forty: 40,
    fifty: 50,
    sixty: 60,
    seventy: 70,
    eighty: 80,
    ninety: 90,
  }),
)
const times: ReadonlyMap<string, number> = new Map(
  Object.entries({ hundred: 100, thousand: 1000, million: 1e6 }),
)

/** Parts of one that are said in words. */
export const partsInWords: ReadonlyMap<string, string> = new Map(
  Object.entries({
    half: '1/2',
    'a half': '1/2',
    'one half': '1/2',
    'a quarter': '1/4',
    quarter: '1/4',
    'one quarter': '1/4',
    'three quarters': '3/4',
    'three quarter': '3/4',
    'a third': '1/3',
    'one third': '1/3',
    'two thirds': '2/3',
    'an eighth': '1/8',
    'one eighth': '1/8',
    'three eighths': '3/8',
    'five eighths': '5/8',
    'seven eighths': '7/8',
  }),
)

/** Words that say a number or a part of one; a quantity with one of them is said in words. */
export const wordsOfNumbers: readonly string[] = [
  ...small.keys(),
  ...tens.keys(),
  ...times.keys(),
  ...['a', 'an', 'half', 'quarter', 'third', 'eighth', 'once', 'twice', 'per cent', 'free', 'and'],
]

const digits = /^\d{1,3}(?:,\d{3})+(?:\.\d+)?$|^\d+(?:\.\d+)?$/

/** How many of something a word says; nothing for a word that says no number. */
function countOf(word: string): number | undefined {
  const [ten = '', one = ''] = word.split('-')
  const both = tens.get(ten)
  if (one !== '') return both === undefined ? undefined : both + (small.get(one) ?? Number.NaN)
  return small.get(word) ?? tens.get(word)
}

/**
 * A number at the beginning of a text that is said in words, wholly or in part: `forty-five`, `a
 * hundred`, `two thousand`, `300 thousand`, `1.5 million`.
 * @returns The number and how many words say it; nothing where none does.
 */
export function numberInWords(
  words: readonly string[],
): { readonly value: number; readonly taken: number } | undefined {
  const [first = '', second = ''] = words
  const isArticle = first === 'a' || first === 'an'
  const begins = digits.test(first)
    ? Number(first.replaceAll(',', ''))
    : isArticle
      ? 1
      : countOf(first)
  if (begins === undefined || Number.isNaN(begins)) return undefined
  const unit = tens.get(first) !== undefined ? small.get(second) : undefined
  let value = begins + (unit ?? 0)
  let taken = unit === undefined ? 1 : 2
  for (
    let by = times.get(words[taken] ?? '');
    by !== undefined;
    by = times.get(words[taken] ?? '')
  ) {
    value *= by
    taken += 1
  }
  // What is written in digits already, and an article before anything else, are no words.
  return (digits.test(first) || isArticle) && taken === 1 ? undefined : { value, taken }
}
