import type { DayFile } from '../../model/today.ts'
import { button, classed } from '../element.ts'
import { type Day, startDay } from './day.ts'
import { followList, followSoon } from './day-list.ts'
import { fieldFor } from './fields.ts'
import { type AllPutIn, fromFragment, fromText, sameDay, toText } from './kept.ts'
import { factsBehind, markNumbers } from './marks.ts'
import { note, offer, teller } from './panel.ts'
import { followReckoners } from './reckoners.ts'
import { put } from './said.ts'
import { readStore, writeStore } from './store.ts'
import { followClock } from './times.ts'
import { followWorksheets } from './worksheet.ts'

/** Times are shown anew after so many milliseconds. */
const often = 15_000

/** What a figure is called on this page, for those who listen. */
const labelOf =
  (root: ParentNode, day: Day) =>
  (name: string): string => {
    const own = day.facts.get(name)?.label
    if (own !== undefined) return own
    const at = root.querySelector(`[data-q="${CSS.escape(name)}"]`)
    const label = at?.closest('.figure, .hero, .result, .first')?.querySelector('.label, .small')
    return (label ?? at?.closest('p, li, td'))?.firstChild?.textContent?.trim().slice(0, 60) ?? ''
  }

/** Fields in place of what the manual says of the day. */
function fillGroups(root: ParentNode, day: Day): void {
  const races = root.querySelector('.day-group [data-fact^="race-days."]')?.closest('.day-group')
  races?.before(...[programs(day)].filter((p) => p !== undefined))
  for (const group of root.querySelectorAll<HTMLElement>('.day-group')) {
    const fields = [...group.querySelectorAll<HTMLElement>('[data-fact]')].flatMap((at) => {
      const fact = day.facts.get(at.dataset['fact'] ?? '')
      return fact ? [fieldFor(fact, day)] : []
    })
    group.replaceWith(classed('div', 'day-grid', ...fields))
  }
}

/** The race days of the program, each a touch. */
function programs(day: Day): HTMLElement | undefined {
  const { programs, words } = day.file
  if (programs.length < 2) return undefined
  const row = classed('p', 'day-acts')
  for (const { called, says } of programs)
    row.append(
      button(put(words.raceDay, { date: called }), () => {
        for (const [path, text] of Object.entries(says)) day.put(path, text)
      }),
    )
  return row
}

/** The fields of the facts that this page rests on, opened by a touch. */
function fields(section: HTMLElement, day: Day): void {
  const open = section.querySelector<HTMLButtonElement>('.day-put')
  // What stands in a row of its own is changed there.
  const facts = factsBehind(document, day).filter(
    (path) => !document.querySelector(`.worksheet [data-fact="${CSS.escape(path)}"]`),
  )
  if (!open) return
  open.hidden = facts.length === 0
  if (open.hidden) return
  const box = classed('div', 'day-grid')
  box.hidden = section.dataset['open'] === undefined
  box.append(
    ...facts.flatMap((path) => {
      const fact = day.facts.get(path)
      return fact ? [fieldFor(fact, day)] : []
    }),
  )
  open.setAttribute('aria-expanded', String(!box.hidden))
  open.addEventListener('click', () => {
    box.hidden = !box.hidden
    open.setAttribute('aria-expanded', String(!box.hidden))
  })
  section.append(box)
  if (!box.hidden) box.querySelector('input')?.focus()
}

/** What was put in on another day, or sent by somebody: it is used when that is wanted. */
function offers(day: Day, key: string, place: HTMLElement, canSend: boolean): void {
  const { words } = day.file
  const sent = canSend ? fromFragment(location.hash) : new Map()
  const kept = fromText(readStore(key))
  const fresh = new Map([...kept].filter(([, { at }]) => sameDay(at, Date.now())))
  const old = new Map([...kept].filter(([name]) => !fresh.has(name)))
  if (fresh.size > 0) day.putAll(fresh)
  const use = (all: AllPutIn) => (yes: boolean) => {
    const now = Date.now()
    if (yes) day.putAll(new Map([...all].map(([name, { text }]) => [name, { text, at: now }])))
    else day.putAll(new Map(day.putIn()))
  }
  if (sent.size > 0) {
    history.replaceState(null, '', location.pathname + location.search)
    place.append(offer(sent, words.sent, day, use(sent)))
  } else if (old.size > 0 && fresh.size === 0)
    place.append(offer(old, words.earlier, day, use(old)))
}

/**
 * Begins to work on the page at hand.
 * @param canSend Whether others can open its address: not that of a file that holds all pages.
 */
export function startPage(file: DayFile, now: () => Date, canSend = true): void {
  const day = startDay(file, () => now().getTime())
  const section = document.querySelector<HTMLElement>('.day-panel')
  const notes = document.querySelector<HTMLElement>('.day-notes') ?? section
  if (!notes) return
  const own = section === null
  const up = section?.dataset['up'] ?? ''
  const canEdit = own || section.querySelector('.day-put') !== null
  const said = note(day, `${up}today.html`, canEdit, canSend)
  const told = teller(day, labelOf(document, day))
  notes.append(said.box, told.box)
  fillGroups(document, day)
  if (!own) {
    document.querySelector('main h1')?.after(section)
    fields(section, day)
  }
  const mark = markNumbers(document, day)
  const follow = [
    followWorksheets(document, day),
    followReckoners(document, day),
    ...[...document.querySelectorAll<HTMLElement>('.day-clock')].map((at) =>
      followClock(at, day, now),
    ),
    ...[...document.querySelectorAll<HTMLElement>('.day-list')].map((at) =>
      followList(at, day, now),
    ),
  ]
  // Behind the marks, since it repeats what they have put into the list.
  const soon = [...document.querySelectorAll<HTMLElement>('.day-soon')].map(followSoon)
  let begun = false
  const show = (): void => {
    for (const each of follow) each()
    const changes = mark()
    for (const each of soon) each()
    const all = day.putIn()
    const isKept = begun ? writeStore(file.key, all.size > 0 ? toText(all) : undefined) : true
    said.show(isKept)
    if (section) section.hidden = !canEdit && all.size === 0
    if (begun) told.tell(changes)
  }
  day.follow(show)
  offers(day, file.key, notes, canSend)
  show()
  begun = true
  setInterval(() => {
    for (const each of [...follow, ...soon]) each()
  }, often)
}
