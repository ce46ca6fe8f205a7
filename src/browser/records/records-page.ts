import { addDays, isDay } from '../../model/day.ts'
import { fill } from '../../model/pattern.ts'
import type { RecordsData } from '../../render/site/records/records-script.ts'
import { isToCome } from './checks.ts'
import { depthPad } from './depth-pad.ts'
import type { Desk, Part } from './desk.ts'
import { fieldsPart } from './fields.ts'
import { filesPart, readFiles } from './files.ts'
import { daysOf, type Kept, written } from './kept.ts'
import { samplesPart } from './samples.ts'
import { seasonChart } from './season-chart.ts'
import { recordStore, type Shelf } from './store.ts'

/** The day that this phone shows. */
const todayHere = (now = new Date()): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-')

/** The browser's store; undefined where it allows none. */
function shelf(): Shelf | undefined {
  try {
    return globalThis.localStorage
  } catch {
    return undefined
  }
}

/** Which record is shown: the one in the address, else the first. */
function chooseRecord(root: HTMLElement): void {
  const sections = [...root.querySelectorAll<HTMLElement>('.record')]
  const links = [...root.querySelectorAll<HTMLAnchorElement>('.which a')]
  const choose = (moved: boolean): void => {
    const wanted = location.hash.slice(1)
    const chosen = sections.find(({ id }) => id === wanted) ?? sections[0]
    for (const section of sections) section.hidden = section !== chosen
    for (const link of links)
      if (link.hash === `#${chosen?.id}`) link.setAttribute('aria-current', 'true')
      else link.removeAttribute('aria-current')
    if (moved && chosen?.id === wanted) chosen.querySelector('h2')?.focus()
  }
  addEventListener('hashchange', () => choose(true))
  choose(false)
}

/** The day that is written on, and the buttons that change it. */
function dayPart(root: HTMLElement, field: HTMLInputElement, desk: Desk): Part {
  const go = (day: string): void => {
    if (!isDay(day)) return
    field.value = day
    desk.show()
  }
  const on = (name: string, act: () => void): void =>
    root.querySelector(`.${name}`)?.addEventListener('click', act)
  on('earlier', () => go(addDays(desk.day(), -1)))
  on('later', () => go(addDays(desk.day(), 1)))
  on('today', () => go(desk.today()))
  field.addEventListener('change', () => go(field.value === '' ? desk.today() : field.value))
  const said = root.querySelector<HTMLElement>('#day-said')
  return {
    show: () => {
      if (!said) return
      const isOdd = isToCome(desk.day(), desk.today())
      said.textContent = isOdd ? desk.data.words.records.faults.future : ''
      said.hidden = !isOdd
    },
  }
}

/** Takes back the last change, and wipes everything after asking. */
function endings(root: HTMLElement, desk: Desk): Part {
  const { words } = desk.data
  const one = <E extends HTMLElement>(name: string) => root.querySelector<E>(name)
  const back = one<HTMLButtonElement>('.back')
  const wipe = one<HTMLButtonElement>('.wipe')
  const ask = one('.ask-wipe')
  const [leave, sure] = ask?.querySelectorAll('button') ?? []
  back?.addEventListener('click', () => {
    if (desk.store.back()) desk.say(words.records.tookBack)
    desk.show()
  })
  const close = (): void => {
    if (ask) ask.hidden = true
    wipe?.focus()
  }
  wipe?.addEventListener('click', () => {
    if (!ask) return
    ask.hidden = false
    const line = ask.querySelector('p')
    if (line) line.textContent = fill(words.records.ask, { count: daysOf(desk.store.now()).length })
    leave?.focus()
  })
  leave?.addEventListener('click', close)
  sure?.addEventListener('click', () => {
    desk.put({})
    desk.say(words.records.wiped)
    close()
    back?.focus()
  })
  return {
    show: () => {
      if (back) back.disabled = !desk.store.canGoBack()
      if (wipe) wipe.disabled = daysOf(desk.store.now()).length === 0
    },
  }
}

/** Builds the page on what stands there. */
export function recordsPage(data: RecordsData): void {
  const root = document.querySelector<HTMLElement>('.records')
  const field = root?.querySelector<HTMLInputElement>('input[type="date"]')
  const said = root?.querySelector<HTMLElement>('.store')
  if (!root || !field || !said) return
  const store = recordStore(data.id, shelf())
  const parts: Part[] = []
  const show = (): void => {
    for (const part of parts) part.show()
  }
  const put = (kept: Kept): void => {
    const isKept = store.change(kept)
    said.textContent = isKept ? data.words.records.kept : data.words.records.nothing
    show()
  }
  const { system, currency } = data
  const desk: Desk = {
    data,
    locale: { system, currency, unitWords: data.words.units },
    store,
    day: () => (isDay(field.value) ? field.value : todayHere()),
    today: () => todayHere(),
    kept: () => store.now()[desk.day()] ?? {},
    write: (name, text) => {
      if ((desk.kept()[name] ?? '') === text.trim()) return show()
      put(written(store.now(), desk.day(), name, text))
    },
    put,
    show,
    say: (text) => {
      said.textContent = text
    },
  }
  field.value = todayHere()
  if (!store.keeps) said.textContent = data.words.records.nothing
  const all = (name: string) => [...root.querySelectorAll<HTMLElement>(name)]
  parts.push(
    dayPart(root, field, desk),
    // Rows are made before what stands in them is shown.
    ...all('[data-samples]').map((box) => samplesPart(box, desk)),
    fieldsPart(root, desk),
    ...all('.pad').map((box) => depthPad(box, desk)),
    ...all('[data-chart]').map((box) => seasonChart(box, desk)),
    ...all('.files').map((list) => filesPart(list, desk)),
    endings(root, desk),
  )
  const read = root.querySelector<HTMLInputElement>('input[type="file"]')
  const took = root.querySelector<HTMLElement>('.took')
  if (read && took) readFiles(read, took, desk)
  addEventListener('storage', ({ key }) => {
    if (key !== store.name) return
    store.refresh()
    show()
  })
  document.querySelector('.without')?.remove()
  root.hidden = false
  chooseRecord(root)
  show()
}
