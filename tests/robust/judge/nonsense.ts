import { visibleText } from '../../support/visible-text.ts'
import type { Output } from './outputs.ts'

const things =
  'loads|hours|days|trips|trucks|laps|passes|people|weeks|rounds|machines|harrows|graders|races|evenings|stations|bags|readings|volunteers|minutes|seconds|gallons|tons|buckets|cups|drivers|lines'

/** What nobody says: one of what is counted as many, a length of time below nothing, words in whose place a number belongs. */
const nonsense: Readonly<Record<string, RegExp>> = {
  'one is not many': new RegExp(`(?<![\\d.,/–:½¼¾⅛⅜⅝⅞-])\\b1 (?:${things})\\b`),
  'less than nothing': /(?<![\w–-])[-−]\d[\d,.]* (?:h|min|gal|tons?|ft|in|mm|L|t|ha|acres?)\b/,
  'a place without its number': /\{[a-z][\w-]*\.[\w.-]+\}/,
  'nothing in brackets': /\(\s*\)/,
}

/** Readers' own places to write, and tables of constants, say such things rightly. */
const rightly = /worksheets\/|numbers\.html|reckoners\.html|facility\.html/

/** What no page of a facility without words of its own may say. */
export function nonsenseIn({ path, text }: Output): readonly string[] {
  if (!path.endsWith('.html') || rightly.test(path)) return []
  const said = visibleText(text)
  return Object.entries(nonsense).flatMap(([what, pattern]) => {
    const found = said.find((t) => pattern.test(t))
    return found === undefined ? [] : [`${path}: ${what}: ${found.slice(0, 160)}`]
  })
}
