import type { PassPattern } from '../../model/manual/charts.ts'
import { entries } from '../../validate/schemas/words/group.ts'
import { type ContextFor, type DeclaredDrawing, declareDrawing, labels } from './drawing.ts'
import { arrow, arrowHead, box, dimension, hatchBox, line, svg, text } from './svg.ts'

const wording = labels(
  'passes',
  entries(
    'strips',
    'lapsOf',
    'workingWidth',
    'eachAdds',
    'rail',
    'outside',
    'start',
    'startOutside',
    'angled',
    'twice',
    'overlapLeast',
    'outward',
    'inward',
  ),
)
type Context = ContextFor<typeof wording>

const size = 17
const [rail, outside, left, right] = [232, 34, 14, 176]

/** The pattern in words. */
const numbers = (pattern: PassPattern, { words, q }: Context): string =>
  [
    `${words.strips} ${pattern.strips}`,
    `${words.lapsOf} ${q(`${pattern.figure}.laps`)}`,
    `${words.workingWidth} ${q(pattern.width)}`,
    `${words.eachAdds} ${q(`${pattern.figure}.effective`)}`,
  ].join('; ')

/** How the strips lie: meters across the track, from the rail, with `k` pixels a meter. */
type Lay = {
  readonly strips: number
  readonly covers: number
  /** From one strip to the next; 0 for a single one. */
  readonly step: number
  readonly k: number
  readonly outward: boolean
}

function layOf(pattern: PassPattern): Lay {
  const { strips } = pattern
  const covers = Math.min(pattern.across, pattern.covers)
  return {
    strips,
    covers,
    step: strips > 1 ? (pattern.across - covers) / (strips - 1) : 0,
    k: (rail - outside) / pattern.across,
    outward: pattern.from === 'rail',
  }
}

const topOf = ({ step, covers, k }: Lay, i: number): number => rail - (i * step + covers) * k

/**
 * One strip with its number in the part that the next one does not cover; where numbers have no
 * room, every other is left out.
 */
function strip(lay: Lay, i: number): string {
  const { strips, step, covers, k, outward } = lay
  const every = [1, 2, 5, 10].find((n) => n * step * k >= 14) ?? 20
  const from = i === 0 ? 0 : Math.max(i * step, (i - 1) * step + covers)
  const to = i === strips - 1 ? i * step + covers : (i + 1) * step
  const middle = rail - ((from + to) / 2) * k
  const number = outward ? i + 1 : strips - i
  const shown =
    i === 0 || i === strips - 1 || (number % every === 0 && strips - number >= every / 2)
  const high = Math.min(16, Math.max(12, step * k))
  return (
    box([left, topOf(lay, i)], right - left, covers * k, 'thin', 'class="strip"') +
    (shown
      ? text([left + 12, middle + 5.5], String(number), 'start', high) +
        arrowHead([right - 10, middle], 0, 10)
      : '')
  )
}

/** What is worked twice, and how much the strips overlap. */
function overlapLabel(lay: Lay, pattern: PassPattern, { words, q }: Context): string {
  const { strips, step, covers, k } = lay
  if (strips < 2 || (covers - step) * k <= 1) return ''
  const twice = rail - (step + (covers - step) / 2) * k
  const said =
    pattern.overlap === undefined ? words.twice : `${words.overlapLeast} ${q(pattern.overlap)}`
  return (
    line([right + 2, twice], [right + 20, rail - 45], 'thin') +
    text([right + 24, rail - 40], said, 'start', size)
  )
}

/** Which way the work goes across the track. */
function directionLabel({ strips, outward }: Lay, { words }: Context): string {
  if (strips < 2) return ''
  const [low, high] = [rail - 128, outside + 10]
  return (
    (outward
      ? arrow([right + 34, low], [right + 34, high])
      : arrow([right + 34, high], [right + 34, low])) +
    text([right + 46, rail - 152], outward ? words.outward : words.inward, 'start', size)
  )
}

/** The numbers of the pattern, beside it. */
function numberLabels(pattern: PassPattern, { words, q }: Context): string {
  const { strips, figure } = pattern
  const large = (x: number, said: string): string =>
    text([x, rail - 100], said, 'start', size + 3, 'font-weight="700"')
  return [
    text([right + 24, rail - 68], `${words.eachAdds} ${q(`${figure}.effective`)}`, 'start', size),
    large(right + 24, `${words.strips} ${strips}`),
    large(right + 130, `${words.lapsOf} ${q(`${figure}.laps`)}`),
  ].join('')
}

function drawPasses(pattern: PassPattern, context: Context): string {
  const { words, q, alt } = context
  const lay = layOf(pattern)
  const { strips, step, covers, k, outward } = lay
  const shared = Math.max(0, covers - step) * k
  const overlaps = Array.from({ length: strips - 1 }, (_, i) =>
    hatchBox([left, topOf(lay, i)], right - left, shared, 6),
  )
  const wide = `${words.workingWidth} ${q(pattern.width)}${pattern.angled ? `, ${words.angled}` : ''}`
  return svg(
    400,
    266,
    alt,
    [
      line([6, outside], [394, outside], 'line'),
      text(
        [14, outside - 11],
        outward ? words.outside : `${words.outside}: ${words.startOutside}`,
        'start',
        size,
      ),
      ...overlaps,
      ...Array.from({ length: strips }, (_, i) => strip(lay, i)),
      line([6, rail], [394, rail], 'bold'),
      text([14, rail + 24], outward ? `${words.rail}: ${words.start}` : words.rail, 'start', size),
      dimension([right + 14, rail], [right + 14, topOf(lay, 0)]),
      text([right + 24, rail - 10], wide, 'start', size),
      overlapLabel(lay, pattern, context),
      numberLabels(pattern, context),
      directionLabel(lay, context),
    ].join(''),
  )
}

/**
 * Strips that an implement lays across the track, to scale: the first and the last at the edges,
 * the others spread evenly between them.
 * @param figure First part of the names of the figures that the pattern is made from.
 */
function passes<const N extends string>(name: N, figure: string): DeclaredDrawing<N> {
  const patternOf = ({ manual }: Context): PassPattern | undefined => manual.charts.passes[figure]
  return declareDrawing({
    name,
    labels: wording,
    draw: (context) => {
      const pattern = patternOf(context)
      return pattern ? drawPasses(pattern, context) : ''
    },
    numbers: (context) => {
      const pattern = patternOf(context)
      return pattern ? numbers(pattern, context) : ''
    },
  })
}

export const passPatterns = [
  passes('passes-grade', 'grade'),
  passes('passes-harrow', 'harrow'),
  passes('passes-screen', 'screen'),
  passes('passes-drum', 'drum'),
  passes('passes-condition', 'condition'),
  passes('passes-water', 'spray'),
] as const
