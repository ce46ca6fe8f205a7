import type { Chance } from '../chance.ts'
import { hostileTexts, oddDays, oddNumbers } from './hostile.ts'
import { type Mutations, ofText, type TextMutation } from './mutation.ts'

/** Words, numbers and signs of a text, each with its place. */
const tokensOf = (text: string): readonly RegExpExecArray[] => [
  ...text.matchAll(/[\p{L}_][\p{L}\p{N}_-]*|\d[\d.,:/-]*|[^\s\p{L}\p{N}]/gu),
]

const isNumber = (token: string): boolean => /^\d/.test(token)

/** The text with another text in the place of one of its tokens. */
const instead =
  (
    isMeant: (token: string) => boolean,
    other: (token: string, all: readonly string[], chance: Chance) => string,
  ): TextMutation =>
  (text, chance) => {
    const tokens = tokensOf(text)
    const meant = tokens.filter(([token]) => isMeant(token))
    if (meant.length === 0) return text
    const { index, 0: token } = chance.oneOf(meant)
    const all = tokens.map(([t]) => t)
    return text.slice(0, index) + other(token, all, chance) + text.slice(index + token.length)
  }

const any = (): boolean => true

/** Slips of people who type, and of people who mean harm. */
export const tokenMutations: Mutations = (
  [
    // Another word of the same text.
    instead(any, (_, all, chance) => chance.oneOf(all)),
    // Nothing.
    instead(any, () => ''),
    // The same twice.
    instead(any, (token) => `${token}${token}`),
    // A letter is missing, or stands twice.
    instead(
      (token) => token.length > 2,
      (token, _, chance) => {
        const i = chance.below(token.length)
        return (
          token.slice(0, i) +
          (chance.happens(0.5) ? token.slice(i, i + 1).repeat(2) : '') +
          token.slice(i + 1)
        )
      },
    ),
    // Another number of the same text, or one that is odd.
    instead(isNumber, (_, all, chance) =>
      chance.happens(0.5) ? chance.oneOf(all.filter(isNumber)) : chance.oneOf(oddNumbers),
    ),
    // Another day or hour.
    instead(
      (token) => /^\d+[-:]\d/.test(token),
      (_, __, chance) => chance.oneOf(oddDays),
    ),
    // What somebody wrote who means harm.
    instead(any, (_, __, chance) => chance.oneOf(hostileTexts)),
    // The same behind a word.
    instead(any, (token, _, chance) => `${token}${chance.oneOf(hostileTexts)}`),
    // Signs that mean something are missing.
    instead(
      (token) => /^[^\p{L}\p{N}]/u.test(token),
      () => '',
    ),
    // Quotes as a word processor writes them.
    (text) => text.replace(/"([^"\n]*)"/, '“$1”'),
  ] satisfies TextMutation[]
).map(ofText)
