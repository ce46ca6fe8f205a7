import { button, classed, element } from '../element.ts'
import type { Day } from './day.ts'
import { type AllPutIn, sameDay, toFragment } from './kept.ts'
import type { Change } from './marks.ts'
import { put, spoken } from './said.ts'

/** A moment as this phone says it: the time today, the day with it before. */
function momentWords(at: number, now: number): string {
  const moment = new Date(at)
  const language = document.documentElement.lang
  const time = moment.toLocaleTimeString(language, { hour: 'numeric', minute: '2-digit' })
  if (sameDay(at, now)) return time
  return `${moment.toLocaleDateString(language, { weekday: 'short', month: 'short', day: 'numeric' })}, ${time}`
}

/** What was put in, each with its label. */
const listOf = (all: AllPutIn, day: Day): HTMLElement =>
  element(
    'ul',
    ...[...all].flatMap(([name, { text }]) => {
      const label = day.facts.get(name)?.label
      return label === undefined ? [] : [element('li', `${label}: `, element('b', text))]
    }),
  )

/** When the last of it was put in. */
const lastAt = (all: AllPutIn): number => Math.max(0, ...[...all.values()].map((p) => p.at))

/** Asks whether numbers of another day, or of somebody else, are to be used. */
export function offer(
  all: AllPutIn,
  words: string,
  day: Day,
  answer: (use: boolean) => void,
): HTMLElement {
  const asked = put(words, { when: momentWords(lastAt(all), Date.now()) })
  const box = classed('div', 'day-note day-offer', element('p', asked), listOf(all, day))
  const reply = (use: boolean) => () => {
    box.remove()
    answer(use)
  }
  const { use, forget } = day.file.words
  box.append(classed('p', 'day-acts', button(use, reply(true)), button(forget, reply(false))))
  return box
}

/** Sends the numbers in the fragment of an address: by the phone's own ways, else by copying. */
async function send(day: Day, page: string, told: HTMLElement): Promise<void> {
  const { words } = day.file
  const url = new URL(page, location.href)
  url.hash = toFragment(day.putIn())
  if (location.protocol.startsWith('http') && 'share' in navigator) {
    const shared = await navigator.share({ title: document.title, url: url.href }).then(
      () => true,
      () => false,
    )
    if (shared) return
  }
  const copied = await Promise.resolve(navigator.clipboard?.writeText(url.href)).then(
    () => navigator.clipboard !== undefined,
    () => false,
  )
  const line = element('input')
  line.value = url.href
  line.readOnly = true
  line.setAttribute('aria-label', words.link)
  told.replaceChildren(element('span', copied ? words.copied : words.notSent), line)
}

type Note = { readonly box: HTMLElement; readonly show: (isKept: boolean) => void }

/**
 * What is changed for the day, with its time; takes all back, puts it in again, sends it.
 * @param page Where the numbers can be seen and changed, as a link from this page.
 * @param canEdit Whether the fields stand on this page.
 * @param canSend Whether its address can be opened by others.
 */
export function note(day: Day, page: string, canEdit: boolean, canSend: boolean): Note {
  const { words } = day.file
  let before: AllPutIn = new Map()
  const head = element('p')
  const told = classed('p', 'day-told')
  const rest = classed('p', 'soft small', words.rest)
  const lost = classed('p', 'soft small', words.forThisPage)
  const see = element('a', words.see)
  see.href = page
  const undo = button(words.undoAll, () => {
    before = day.putIn()
    day.undo()
  })
  const again = button(words.again, () => day.putAll(before))
  const sends = button(words.send, () => void send(day, page, told))
  const acts = classed('p', 'day-acts', ...(canEdit ? [undo, again, sends] : [see]))
  const box = classed('div', 'day-note', head, acts, told, ...(canEdit ? [] : [rest]), lost)
  return {
    box,
    show: (isKept) => {
      const all = day.putIn()
      const count = String(all.size)
      const when = momentWords(lastAt(all), Date.now())
      head.replaceChildren(
        element('b', all.size === 0 ? words.same : put(words.changed, { count })),
        all.size === 0 ? '' : `, ${put(words.putInAt, { when })}`,
      )
      undo.hidden = all.size === 0
      sends.hidden = all.size === 0 || !canSend
      again.hidden = all.size > 0 || before.size === 0
      if (all.size === 0) told.replaceChildren()
      box.hidden = all.size === 0 && before.size === 0
      lost.hidden = isKept
    },
  }
}

/** A listener is told of so many numbers; who wants all reads the page. */
const toldAtMost = 4

/** Milliseconds without a key after which a screen reader is told. */
const pause = 800

/** Tells those who listen what has changed, once nobody types any more. */
export function teller(day: Day, labelOf: (name: string) => string) {
  const box = classed('p', 'unseen')
  box.setAttribute('role', 'status')
  let timer = 0
  const tell = (changes: readonly Change[]): void => {
    clearTimeout(timer)
    timer = setTimeout(() => {
      const said = changes.slice(0, toldAtMost).map(({ name, now, printed }) =>
        put(day.file.words.said, {
          label: labelOf(name),
          now: spoken(now, day),
          manual: spoken(printed, day),
        }),
      )
      box.textContent = said.length > 0 ? said.join('. ') : day.file.words.same
    }, pause)
  }
  return { box, tell }
}
