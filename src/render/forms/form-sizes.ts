import type { FormBox } from '../../model/manual/form.ts'
import { mmOfInch, type Paper, paperSize } from '../../model/papers.ts'

/** What of the paper is not written on, mm; the style sheet of forms is given the same numbers. */
export const margin = { top: 14, bottom: 12, bound: 24, outer: 14 } as const

/** Room for what is written, mm. */
export const formRoom = (paper: Paper): { readonly width: number; readonly height: number } => {
  const [width, height] = paperSize(paper)
  return { width: width - margin.bound - margin.outer, height: height - margin.top - margin.bottom }
}

/**
 * Heights, mm. A row for handwriting is never lower than `hand`; where most rows stand ready, blank
 * ones are added only while all stay `roomy`.
 */
export const heights = {
  hand: 8.6,
  roomy: 12.5,
  title: 4.6,
  titleLine: 8.6,
  line: 4.2,
  tick: 5.8,
  boxGap: 2,
  tableGap: 2.5,
  headLine: 3.9,
  readyLine: 4,
  sign: 15,
} as const

/**
 * Sizes of type, points, as in the style sheet; the title's letters are narrower than those of
 * text.
 */
export const type = {
  title: 18.7,
  use: 9,
  about: 9.6,
  label: 8.4,
  head: 8.6,
  ready: 9.4,
} as const

/**
 * Width of a letter against the height of the type, on the wide side: a guess that is too small
 * would run off the page.
 */
const letter = 0.5
const mmOf = (points: number): number => (points * mmOfInch) / 72

/** Lines that a text takes at most in a column. */
export const linesIn = (text: string, width: number, points: number): number => {
  const perLine = Math.max(1, Math.floor(width / (letter * mmOf(points))))
  const longest = Math.max(...text.split(/\s+/).map((w) => w.length), 1)
  return Math.max(Math.ceil((text.length * 1.08) / perLine), Math.ceil(longest / perLine))
}

/** What boxes are measured with: width of the page's text, mm, and the words of a text. */
export type BoxMeasures = {
  readonly width: number
  readonly plain: (text: string) => string
}

/** Height of boxes that follow each other in rows of six sixths, mm. */
export function boxesHeight(boxes: readonly FormBox[], m: BoxMeasures): number {
  let [used, row, total] = [0, 0, 0]
  for (const b of boxes) {
    if (used + b.wide > 6) {
      total += row + heights.boxGap
      used = 0
      row = 0
    }
    used += b.wide
    row = Math.max(row, boxHeight(b, m))
  }
  return boxes.length === 0 ? 0 : total + row + heights.tableGap
}

/** Lines that ticks with their words take, side by side. */
function tickLines(choices: readonly string[], width: number): number {
  let [lines, used] = [1, 0]
  for (const c of choices) {
    const wide = 10 + c.length * letter * mmOf(type.about)
    if (used > 0 && used + wide > width) {
      lines += 1
      used = 0
    }
    used += wide
  }
  return lines
}

/** A box as high as its lines of handwriting, or as its ticks. */
export function boxHeight(b: FormBox, m: BoxMeasures): number {
  const width = (m.width * b.wide) / 6 - 5
  const label = linesIn(m.plain(b.label), width, type.label) * heights.readyLine + 0.8
  return (
    label +
    (b.choices.length > 0
      ? Math.max(heights.hand - 1, tickLines(b.choices.map(m.plain), width) * heights.tick)
      : b.tall * 8.2)
  )
}
