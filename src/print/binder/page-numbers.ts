const numerals: readonly (readonly [number, string])[] = [
  [100, 'c'],
  [90, 'xc'],
  [50, 'l'],
  [40, 'xl'],
  [10, 'x'],
  [9, 'ix'],
  [5, 'v'],
  [4, 'iv'],
  [1, 'i'],
]

/** 4 → `iv`, for the pages before the body. */
export function roman(n: number): string {
  let rest = n
  return numerals.reduce((text, [value, numeral]) => {
    const times = Math.floor(rest / value)
    rest -= times * value
    return text + numeral.repeat(times)
  }, '')
}

/** How the pages of a part are numbered. */
export type Numbering = {
  /** Of the part; the front has none and is numbered in roman. */ readonly number:
    | number
    | undefined /** Leading pages that are not counted. */
  readonly unnumbered: number
}

/**
 * What stands on a page of a part: `iv` in the front, `3-2` in part 3; the number of the part alone
 * on its divider, and nothing on the divider's back.
 * @param page Counted from 0 within the part.
 */
export function pageLabel({ number, unnumbered }: Numbering, page: number): string {
  if (page < unnumbered) return page === 0 ? String(number) : ''
  const counted = page - unnumbered + 1
  return number === undefined ? roman(counted) : `${number}-${counted}`
}

/** A run of pages numbered alike, for the page labels of a PDF (ISO 32000-1, 12.4.2). */
export type LabelRange = {
  readonly start: number
  readonly style: 'roman' | 'decimal' | 'none'
  readonly prefix: string /** Number of its first page. */
  readonly first: number
}

/** The label ranges of a part whose first page is page `start` (from 0) of the document. */
export function labelRanges({ number, unnumbered }: Numbering, start: number): LabelRange[] {
  if (number === undefined) return [{ start, style: 'roman', prefix: '', first: 1 }]
  const leading = Array.from(
    { length: unnumbered },
    (_, i): LabelRange => ({
      start: start + i,
      style: 'none',
      prefix: pageLabel({ number, unnumbered }, i),
      first: 1,
    }),
  )
  return [
    ...leading,
    { start: start + unnumbered, style: 'decimal', prefix: `${number}-`, first: 1 },
  ]
}
