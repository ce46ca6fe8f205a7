import { postTime } from '../../compute/racing/post-times.ts'
import { classed, element } from '../element.ts'
import type { Day } from './day.ts'
import { nowOf, put } from './said.ts'
import { awayWords, belongs, timeOn, timeWords } from './times.ts'

const card = {
  first: 'race-days.first-post',
  interval: 'race-days.interval',
  breakEvery: 'race-days.break-every',
  pause: 'race-days.break',
} as const

const siOf = (name: string, day: Day): number | undefined => {
  const said = nowOf(name, day)
  return said?.ok ? said.si : undefined
}

/** The races between the first and the last, which the plan does not list. */
function raceRows(list: HTMLElement, day: Day): readonly { row: HTMLElement; at: number }[] {
  const [first, interval, breakEvery = 0, pause = 0] = Object.values(card).map((n) => siOf(n, day))
  const races = siOf('race-days.races', day)
  if (first === undefined || interval === undefined || races === undefined) return []
  return Array.from({ length: Math.max(0, races - 2) }, (_, i) => {
    const at = postTime(i + 2, { first, interval, breakEvery, pause })
    const number = String(i + 2)
    const row = element(
      'li',
      classed('span', 'at', timeWords(at, day)),
      classed('span', 'does', put(list.dataset['race'] ?? '', { number })),
    )
    row.className = 'day-race'
    return { row, at }
  })
}

/** Whether this phone shows a race day, as far as anybody knows which days these are. */
function isRaceDay({ file }: Day, now: Date): boolean {
  const today = [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-')
  return file.programs.length === 0 || file.programs.some(({ date }) => date === today)
}

/** Marks what is past, and what comes next. */
function markNext(
  rows: readonly { readonly row: HTMLElement; readonly at: number }[],
  day: Day,
  now: Date,
): void {
  const time = timeOn(now)
  const next = rows.find(({ at }) => at >= time)
  for (const { row, at } of rows) {
    row.classList.toggle('is-past', at < time)
    row.querySelector('.day-next')?.remove()
    if (next && row !== next.row) row.removeAttribute('aria-current')
  }
  if (!next) return
  next.row.setAttribute('aria-current', 'time')
  next.row.append(
    classed(
      'span',
      'day-next',
      element('b', day.file.words.next),
      ` ${awayWords(next.at - time, day)}`,
    ),
  )
}

/** Follows the race day by the hour: its times, the races, what is past and what comes next. */
export function followList(section: HTMLElement, day: Day, now: () => Date): () => void {
  const list = section.querySelector('ol')
  const rows = [...section.querySelectorAll<HTMLElement>('[data-at]')]
  return () => {
    if (!list) return
    const timed = rows.flatMap((row) => {
      row.hidden = !belongs(row, day)
      const at = siOf(row.dataset['at'] ?? '', day)
      return row.hidden || at === undefined ? [] : [{ row, at }]
    })
    for (const old of list.querySelectorAll('.day-race')) old.remove()
    const all = [...timed, ...raceRows(list, day)].sort((a, b) => a.at - b.at)
    list.append(...all.map(({ row }) => row))
    if (isRaceDay(day, now())) markNext(all, day, now())
  }
}

/** What comes next, and what comes then, where the page begins: as the list says it. */
export function followSoon(place: HTMLElement): () => void {
  const list = place.closest('main')?.querySelector('.day-list')
  return () => {
    const next = list?.querySelector('[aria-current]')
    const rows = [next, next?.nextElementSibling].flatMap((row) => row?.cloneNode(true) ?? [])
    place.replaceChildren(...rows)
  }
}
