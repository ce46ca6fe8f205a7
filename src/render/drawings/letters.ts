import { escapeHtml } from '../text/escape-html.ts'
import type { Point } from './ink.ts'

/**
 * The smallest type, points. A page of A4 is a little narrower than the widest drawing, which is then
 * printed at 96 parts of 100: what is read is still 8 points high.
 */
export const smallest = 8.4

/** How wide letters are, in parts of their size, by kind: a little wider than the face in use. */
const kinds: readonly (readonly [RegExp, number])[] = [
  [/[ijl.,:;'’|!]/, 0.27],
  [/[ftr()\- ]/, 0.34],
  [/[mwMW@—]/, 0.82],
  [/[A-Z%½¼¾⅛⅜⅝⅞]/, 0.64],
]

/** Room that words take at the most, points. */
export const widthOf = (words: string, size: number, bold = false): number =>
  [...words].reduce((sum, c) => sum + (kinds.find(([kind]) => kind.test(c))?.[1] ?? 0.51), 0) *
  size *
  (bold ? 1.06 : 1)

const fractions: Readonly<Record<string, string>> = {
  '1/8': '⅛',
  '1/4': '¼',
  '3/8': '⅜',
  '1/2': '½',
  '5/8': '⅝',
  '3/4': '¾',
  '7/8': '⅞',
}

/** Fractions as one letter, close to the number before them. */
export const withFractions = (words: string): string =>
  words.replace(
    /(\d )?(?<!\d)([1357]\/[248])(?!\d)/g,
    (all, whole: string | undefined, part: string) => {
      const letter = fractions[part]
      return letter === undefined ? all : `${(whole ?? '').trim()}${letter}`
    },
  )

/** Words in lines that are no wider than `width`; a word alone may be. */
export function wrapped(words: string, width: number, size: number, bold = false): string[] {
  const lines: string[] = []
  for (const word of withFractions(words).split(' ')) {
    const last = lines.at(-1)
    if (last !== undefined && widthOf(`${last} ${word}`, size, bold) <= width)
      lines[lines.length - 1] = `${last} ${word}`
    else lines.push(word)
  }
  return lines
}

type Letters = {
  readonly size?: number
  readonly bold?: boolean
  readonly anchor?: 'start' | 'middle' | 'end'
  /** Paper round the letters, where a line passes behind them. */
  readonly halo?: boolean
  /** In the narrow face, as numbers of laps are. */
  readonly narrow?: boolean
  readonly color?: 'ink' | 'paper'
}

const round = (x: number): number => Math.round(x * 100) / 100

/** One line of words with its foot at a place. */
export function say(
  [x, y]: Point,
  said: string,
  {
    size = 9,
    bold = false,
    anchor = 'start',
    halo = false,
    narrow = false,
    color = 'ink',
  }: Letters = {},
): string {
  const face = `${bold || narrow ? ' font-weight="600"' : ''}${narrow ? ' font-family="Barlow Condensed"' : ''}`
  const around = halo
    ? ' paint-order="stroke" stroke="var(--paper)" stroke-width="3" stroke-linejoin="round"'
    : ''
  return `<text x="${round(x)}" y="${round(y)}" text-anchor="${anchor}" font-size="${size}" fill="var(--${color})"${face}${around}>${escapeHtml(withFractions(said))}</text>`
}

/** Lines of words below each other. */
export const lines = (at: Point, said: readonly string[], style: Letters = {}): string =>
  said.map((line, i) => say([at[0], at[1] + i * lead(style.size)], line, style)).join('')

/** From line to line, points. */
export const lead = (size = 9): number => size * 1.14
