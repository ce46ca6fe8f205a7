import type { DrawingContext } from '../drawing-context.ts'
import { box, dashed, hatchBox, line, svg, text } from '../svg.ts'

const [left, right, top, high, gap] = [118, 880, 70, 34, 52]

const waterName = (water: { readonly instead: boolean }, words: DrawingContext['words']): string =>
  water.instead ? words.waterInstead : words.water1

/** The interval in words, by the minute. */
export function raceIntervalDetails({ manual, words, q }: DrawingContext): string {
  const at = manual.charts.interval
  if (!at) return ''
  const water = at.water
    ? [`${waterName(at.water, words)} ${words.lapsOf} ${q(at.water.figure)}`]
    : []
  return [
    `${words.trackClear}: ${q('gap.clear')}`,
    `${words.harrow}: ${q('gap.clear')}–${q('gap.harrowed')}, ${words.lapsOf} ${q('between.laps')}`,
    ...water,
    `${words.trackOpen}: ${q('gap.open')}`,
    `${words.nextRace}: ${q('race-days.interval')}`,
  ].join('; ')
}

/** The minutes from the finish of one race to the next: whose the track is, and when. */
export function raceIntervalDrawing({ manual, words, q, caption }: DrawingContext): string {
  const at = manual.charts.interval
  if (!at) return ''
  const x = (s: number): number => left + ((right - left) * s) / at.interval
  const foot = top + gap * (at.water ? 3 : 2) - 8
  const bar = (row: number, from: number, to: number, cls: string): string =>
    box([x(from), top + row * gap], x(to) - x(from), high, 'line', `class="${cls}"`)
  const horses = (from: number, to: number): string =>
    bar(0, from, to, 'horses') + hatchBox([x(from), top], x(to) - x(from), high, 8)
  const name = (row: number, words = ''): string =>
    text([left - 12, top + row * gap + 23], words, 'end', 16, 'font-weight="700"')
  const laps = (row: number, from: number, to: number, count: number): string =>
    Array.from({ length: Math.max(0, count - 1) }, (_, i) =>
      x(from + ((to - from) * (i + 1)) / count),
    )
      .map((at) => line([at, top + row * gap], [at, top + row * gap + high], 'thin', 'class="lap"'))
      .join('')
  // In the first lap where it has room; else behind the bar, clear of the lines that it may cross.
  const lapsLabel = (row: number, from: number, to: number, count: number, name: string): string =>
    text(
      [
        (x(to) - x(from)) / Math.max(1, count) > 80 ? x(from) + 12 : x(to) + 8,
        top + row * gap + 23,
      ],
      `${words.lapsOf} ${q(name)}`,
      'start',
      16,
      'paint-order="stroke" stroke="#fff" stroke-width="5"',
    )
  const minutes = at.interval / 60
  const every = minutes > 40 ? 10 : minutes > 16 ? 5 : 2
  const ticks = Array.from({ length: Math.floor(minutes / every) + 1 }, (_, i) => i * every)
  const call = (s: number, label: string, anchor: 'start' | 'end'): string =>
    line([x(s), top - 14], [x(s), foot], 'line', dashed) +
    text([x(s) + (anchor === 'start' ? -2 : 2), top - 22], label, anchor, 16, 'font-weight="700"')
  return svg(
    900,
    foot + 58,
    caption,
    [
      name(0, words.horses),
      horses(0, at.clear),
      horses(at.open, at.interval),
      text([(x(at.clear) + x(at.open)) / 2, top + 23], words.noHorse, 'middle', 16),
      name(1, words.harrow),
      bar(1, at.clear, at.harrowed, 'harrow'),
      at.laps <= 20 ? laps(1, at.clear, at.harrowed, at.laps) : '',
      ...(at.water
        ? [
            name(2, waterName(at.water, words)),
            bar(2, at.water.from, at.water.to, 'water'),
            laps(2, at.water.from, at.water.to, at.water.laps),
          ]
        : []),
      call(at.clear, `${words.trackClear}: ${q('gap.clear')}`, 'start'),
      call(at.open, `${words.trackOpen}: ${q('gap.open')}`, 'end'),
      lapsLabel(1, at.clear, at.harrowed, at.laps, 'between.laps'),
      at.water ? lapsLabel(2, at.water.from, at.water.to, at.water.laps, at.water.figure) : '',
      line([left, foot], [right, foot], 'bold'),
      ...ticks.map(
        (m) =>
          line([x(m * 60), foot], [x(m * 60), foot + 7], 'line') +
          text([x(m * 60), foot + 24], String(m), 'middle', 15),
      ),
      text([left, foot + 48], words.afterFinish, 'start', 15),
      text([right, foot + 48], `${words.nextRace}: ${q('race-days.interval')}`, 'end', 15),
    ].join(''),
  )
}
