import { type Html, html } from '../text/html.ts'

/** How far a cut mark stands off the cards, and how long it is, mm. */
const mark = { gap: 1.5, length: 5 } as const

type Size = readonly [number, number]

/**
 * Marks in the margin where the edges of the cards meet it: a cut from mark to mark runs along four
 * edges at once.
 * @param page Width and height of the paper, mm.
 * @param card Width and height of a card, mm.
 * @param across Cards beside each other, as many as below each other.
 */
export function cutMarks(page: Size, card: Size, across: number): Html {
  const edges = (axis: 0 | 1): readonly number[] =>
    Array.from(
      { length: across + 1 },
      (_, i) => (page[axis] - across * card[axis]) / 2 + i * card[axis],
    )
  const [xs, ys] = [edges(0), edges(1)]
  const ends = (at: readonly number[]): readonly number[] => [
    (at[0] ?? 0) - mark.gap - mark.length,
    (at.at(-1) ?? 0) + mark.gap,
  ]
  const d = [
    ...xs.flatMap((x) => ends(ys).map((y) => `M${x.toFixed(2)} ${y.toFixed(2)}v${mark.length}`)),
    ...ys.flatMap((y) => ends(xs).map((x) => `M${x.toFixed(2)} ${y.toFixed(2)}h${mark.length}`)),
  ].join('')
  return html(
    `<svg class="cut-marks" viewBox="0 0 ${page[0]} ${page[1]}" aria-hidden="true"><path d="${d}" fill="none" stroke="#000" stroke-width=".18"/></svg>`,
  )
}
