import type { DrawingContext } from './drawing-context.ts'
import { arrow, arrowHead, box, dimension, hatchBox, line, svg, text } from './svg.ts'

const size = 17
const [rail, outside, left, right] = [232, 34, 14, 176]

/** The pattern in words. */
export const passesDetails =
  (id: string) =>
  ({ manual, words, q }: DrawingContext): string => {
    const pattern = manual.charts.passes[id]
    return pattern
      ? [
          `${words.strips} ${pattern.strips}`,
          `${words.lapsOf} ${q(`${pattern.figure}.laps`)}`,
          `${words.workingWidth} ${q(pattern.width)}`,
          `${words.eachAdds} ${q(`${pattern.figure}.effective`)}`,
        ].join('; ')
      : ''
  }

/**
 * Strips that an implement lays from the rail to the outside, to scale across the track: the first
 * and the last at the edges, the others spread evenly between them.
 */
export const passesDrawing =
  (id: string) =>
  ({ manual, words, q, caption }: DrawingContext): string => {
    const pattern = manual.charts.passes[id]
    if (!pattern) return ''
    const { strips, figure } = pattern
    const outward = pattern.from === 'rail'
    const k = (rail - outside) / pattern.across
    const covers = Math.min(pattern.across, pattern.covers)
    const step = strips > 1 ? (pattern.across - covers) / (strips - 1) : 0
    const topOf = (i: number): number => rail - (i * step + covers) * k
    // Numbers stand in the part of a strip that the next one does not cover; where they have no
    // room, every other is left out.
    const every = [1, 2, 5, 10].find((n) => n * step * k >= 14) ?? 20
    const strip = (i: number): string => {
      const [from, to] = [
        i === 0 ? 0 : Math.max(i * step, (i - 1) * step + covers),
        i === strips - 1 ? i * step + covers : (i + 1) * step,
      ]
      const middle = rail - ((from + to) / 2) * k
      const number = outward ? i + 1 : strips - i
      const shown =
        i === 0 || i === strips - 1 || (number % every === 0 && strips - number >= every / 2)
      return (
        box([left, topOf(i)], right - left, covers * k, 'thin', 'class="strip"') +
        (shown
          ? text(
              [left + 12, middle + 5.5],
              String(number),
              'start',
              Math.min(16, Math.max(12, step * k)),
            ) + arrowHead([right - 10, middle], 0, 10)
          : '')
      )
    }
    const twice = strips > 1 ? rail - (step + (covers - step) / 2) * k : 0
    const shared = Math.max(0, covers - step) * k
    const overlaps = Array.from({ length: strips - 1 }, (_, i) =>
      hatchBox([left, rail - (i * step + covers) * k], right - left, shared, 6),
    )
    return svg(
      400,
      266,
      caption,
      [
        line([6, outside], [394, outside], 'line'),
        text(
          [14, outside - 11],
          outward ? words.outside : `${words.outside}: ${words.startOutside}`,
          'start',
          size,
        ),
        ...overlaps,
        ...Array.from({ length: strips }, (_, i) => strip(i)),
        line([6, rail], [394, rail], 'bold'),
        text(
          [14, rail + 24],
          outward ? `${words.rail}: ${words.start}` : words.rail,
          'start',
          size,
        ),
        dimension([right + 14, rail], [right + 14, topOf(0)]),
        text(
          [right + 24, rail - 10],
          `${words.workingWidth} ${q(pattern.width)}${pattern.angled ? `, ${words.angled}` : ''}`,
          'start',
          size,
        ),
        strips > 1 && shared > 1
          ? line([right + 2, twice], [right + 20, rail - 45], 'thin') +
            text(
              [right + 24, rail - 40],
              pattern.overlap === undefined
                ? words.twice
                : `${words.overlapLeast} ${q(pattern.overlap)}`,
              'start',
              size,
            )
          : '',
        text(
          [right + 24, rail - 68],
          `${words.eachAdds} ${q(`${figure}.effective`)}`,
          'start',
          size,
        ),
        text(
          [right + 24, rail - 100],
          `${words.strips} ${strips}`,
          'start',
          size + 3,
          'font-weight="700"',
        ),
        text(
          [right + 130, rail - 100],
          `${words.lapsOf} ${q(`${figure}.laps`)}`,
          'start',
          size + 3,
          'font-weight="700"',
        ),
        strips > 1
          ? (outward
              ? arrow([right + 34, rail - 128], [right + 34, outside + 10])
              : arrow([right + 34, outside + 10], [right + 34, rail - 128])) +
            text([right + 46, rail - 152], outward ? words.outward : words.inward, 'start', size)
          : '',
      ].join(''),
    )
  }
