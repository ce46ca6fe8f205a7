import { dayNumber, dayOfMonth, monthOf } from '../../model/day.ts'
import { fill } from '../../model/pattern.ts'
import { isKeptNumber, type KeptNumber, type PastDay } from '../../model/records.ts'
import { element } from '../element.ts'
import type { Desk, Part } from './desk.ts'
import { printedText } from './numbers.ts'
import { seasonOf } from './season.ts'

/** Size of the chart and room for its letters, in units of its own. */
const [wide, high, left, top, below] = [340, 170, 58, 12, 24] as const
const svg = (name: string, attributes: Readonly<Record<string, string | number>>): SVGElement => {
  const made = document.createElementNS('http://www.w3.org/2000/svg', name)
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value))
  return made
}

const letters = (text: string, x: number, y: number, anchor: string): SVGElement => {
  const made = svg('text', { x, y, 'text-anchor': anchor })
  made.textContent = text
  return made
}

/** "Jul 30", or "30 Jul". */
function dayText(date: string, { data }: Desk): string {
  const [month, day] = [data.months[monthOf(date) - 1] ?? '', dayOfMonth(date)]
  return data.system === 'us' ? `${month} ${day}` : `${day} ${month}`
}

/** From nothing upward, or between its ends. */
const isAmount = (name: KeptNumber): boolean => name === 'rain' || name === 'loads'

/** Room at the right for the name of what is wanted. */
const named = 50

type Scale = {
  /** Width of a bar: no wider than its day. */
  readonly bar: number
  readonly right: number
  readonly x: (date: string) => number
  readonly y: (si: number) => number
  readonly low: number
  readonly top: number
}

function scaleOf(days: readonly PastDay[], name: KeptNumber, wanted: number | undefined): Scale {
  const right = wanted === undefined ? wide : wide - named
  const first = dayNumber(days[0]?.date ?? '')
  const length = Math.max(1, dayNumber(days.at(-1)?.date ?? '') - first)
  const values = [...days.flatMap((d) => [d.value, d.least ?? d.value, d.most ?? d.value])]
  if (wanted !== undefined) values.push(wanted)
  const [least, most] = [isAmount(name) ? 0 : Math.min(...values), Math.max(...values)]
  const room = most > least ? most - least : Math.max(Math.abs(most) * 0.2, 1e-3)
  const [from, to] = [isAmount(name) ? 0 : least - room * 0.1, most + room * 0.1]
  return {
    bar: Math.min(5, Math.max(1, (0.7 * (right - left - 16)) / length)),
    right,
    x: (date) => left + 8 + ((right - left - 16) * (dayNumber(date) - first)) / length,
    y: (si) => top + (high - top - below) * (1 - (si - from) / (to - from)),
    low: least,
    top: most > least ? most : least + room,
  }
}

/** What is drawn for a day: a bar from nothing, or a dot with how far its readings reach. */
function marks(day: PastDay, name: KeptNumber, { x, y, bar }: Scale): readonly SVGElement[] {
  const at = x(day.date)
  if (isAmount(name))
    return day.value > 0
      ? [
          svg('line', {
            class: 'bar-line',
            x1: at,
            x2: at,
            y1: y(0),
            y2: y(day.value),
            'stroke-width': bar,
          }),
        ]
      : []
  const reach =
    day.least === undefined || day.most === undefined
      ? []
      : [svg('line', { class: 'reach', x1: at, x2: at, y1: y(day.least), y2: y(day.most) })]
  return [...reach, svg('circle', { class: 'dot', cx: at, cy: y(day.value), r: 3.2 })]
}

function draw(days: readonly PastDay[], name: KeptNumber, title: string, desk: Desk): SVGElement {
  const { data, locale } = desk
  const wanted = data.wanted[name]
  const scale = scaleOf(days, name, wanted)
  const [first, last] = [days[0]?.date ?? '', days.at(-1)?.date ?? '']
  const text = (si: number): string => printedText(name, si, locale)
  const values = days.map((d) => d.value)
  const chart = svg('svg', { viewBox: `0 0 ${wide} ${high}`, role: 'img' })
  chart.setAttribute(
    'aria-label',
    fill(data.words.records.chart, {
      record: title,
      from: dayText(first, desk),
      to: dayText(last, desk),
      least: text(Math.min(...values)),
      most: text(Math.max(...values)),
    }),
  )
  const ends = [scale.low, scale.top].flatMap((si) => [
    svg('line', { class: 'rule', x1: left, x2: scale.right, y1: scale.y(si), y2: scale.y(si) }),
    letters(text(si), left - 6, scale.y(si) + 4, 'end'),
  ])
  const goal =
    wanted === undefined
      ? []
      : [
          svg('line', {
            class: 'goal',
            x1: left,
            x2: scale.right,
            y1: scale.y(wanted),
            y2: scale.y(wanted),
          }),
          letters(data.words.records.wanted, wide, scale.y(wanted) + 4, 'end'),
        ]
  chart.append(
    ...ends,
    ...goal,
    ...days.flatMap((day) => marks(day, name, scale)),
    letters(dayText(first, desk), left, high - 6, 'start'),
    ...(first === last ? [] : [letters(dayText(last, desk), scale.right, high - 6, 'end')]),
  )
  return chart
}

/** The same as a table, the youngest first, for whoever cannot see the chart. */
function tableOf(days: readonly PastDay[], name: KeptNumber, title: string, desk: Desk): Element {
  const head = element('tr', element('th', desk.data.words.records.day), element('th', title))
  const rows = days
    .toReversed()
    .map(({ date, value }) =>
      element(
        'tr',
        element('td', dayText(date, desk)),
        element('td', printedText(name, value, desk.locale)),
      ),
    )
  return element(
    'details',
    element('summary', desk.data.words.records.list),
    element('table', element('thead', head), element('tbody', ...rows)),
  )
}

/** A number over the season, below the record that it is of. */
export function seasonChart(box: HTMLElement, desk: Desk): Part {
  const { chart: name = '', title = '' } = box.dataset
  let drawn = ''
  return {
    show: () => {
      if (!isKeptNumber(name)) return
      const days = seasonOf(name, desk.store.now(), desk.data.past[name] ?? [])
      const state = JSON.stringify(days)
      if (state === drawn) return
      drawn = state
      if (days.length === 0) box.replaceChildren(element('p', desk.data.words.records.noSeason))
      else box.replaceChildren(draw(days, name, title, desk), tableOf(days, name, title, desk))
    },
  }
}
