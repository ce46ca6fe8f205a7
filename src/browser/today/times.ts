import { formatQuantity } from '../../model/quantity/format-quantity.ts'
import { readQuantity } from '../../model/quantity/read-quantity.ts'
import { button, classed, element } from '../element.ts'
import type { Day } from './day.ts'
import { newId } from './fields.ts'
import { readTime } from './read-field.ts'
import { nowOf, put } from './said.ts'

const dayLength = 86_400

/** Seconds after midnight that a phone shows. */
export const timeOn = (now: Date): number =>
  now.getHours() * 3600 + now.getMinutes() * 60 + now.getSeconds()

export const timeWords = (si: number, day: Day): string =>
  formatQuantity(((si % dayLength) + dayLength) % dayLength, 'clock', day.locale).text

/** How long it is until then, or since. */
export function awayWords(seconds: number, day: Day): string {
  const { words } = day.file
  const minutes = Math.round(Math.abs(seconds) / 60) * 60
  const time = formatQuantity(minutes, 'minutes', day.locale).text
  return put(seconds >= 0 ? words.in : words.ago, { time })
}

/** Whether a row belongs, by the numbers of the day: needs, lacks, above nought, nought. */
export function belongs(row: HTMLElement, day: Day): boolean {
  const [needs, lacks, above, zero] = JSON.parse(row.dataset['waits'] ?? '[[],[],[],[]]') as [
    string[],
    string[],
    string[],
    string[],
  ]
  const si = (name: string): number | undefined => {
    const said = nowOf(name, day)
    return said?.ok ? said.si : undefined
  }
  return (
    needs.every((name) => si(name) !== undefined) &&
    lacks.every((name) => si(name) === undefined) &&
    above.every((name) => (si(name) ?? 0) > 1e-9) &&
    zero.every((name) => Math.abs(si(name) ?? 1) <= 1e-9)
  )
}

/** A time that is far in the past belongs to tomorrow, one far ahead to yesterday. */
function untilThen(then: number, now: number): number {
  const away = (((then - now) % dayLength) + dayLength) % dayLength
  return away > dayLength * 0.75 ? away - dayLength : away
}

type Clock = { readonly field: HTMLElement; readonly time: () => number | undefined }

/** The field of a clock's time, with a touch for the time that it is where it may be that. */
function timeField(
  name: string,
  { label = '', now: mayBeNow }: DOMStringMap,
  day: Day,
  now: () => Date,
): Clock {
  const { words } = day.file
  const input = element('input')
  input.id = newId()
  input.type = 'text'
  input.autocomplete = 'off'
  input.placeholder = words.timeHint
  input.setAttribute('enterkeyhint', 'done')
  const fault = classed('p', 'day-fault')
  fault.id = `${input.id}-fault`
  input.setAttribute('aria-describedby', fault.id)
  const called = element('label', label)
  called.htmlFor = input.id
  const time = (): number | undefined => {
    const text = day.putIn().get(name)?.text
    // What has just passed may still be meant.
    return text === undefined ? undefined : readTime(text, timeOn(now()) - 3600)
  }
  const settle = (): void => {
    const read = time()
    if (read !== undefined) day.put(name, timeWords(read, day))
    input.value = day.putIn().get(name)?.text ?? ''
  }
  input.addEventListener('focus', () => input.select())
  input.addEventListener('input', () => day.put(name, input.value))
  input.addEventListener('change', settle)
  input.addEventListener('keydown', ({ key }) => {
    if (key === 'Enter') input.blur()
  })
  const set = (words: string, text: () => string): HTMLButtonElement =>
    button(words, () => {
      day.put(name, text())
      input.value = day.putIn().get(name)?.text ?? ''
    })
  const clear = set(words.clear, () => '')
  const touches =
    mayBeNow === undefined ? [] : [set(words.nowAt, () => timeWords(timeOn(now()), day))]
  const field = classed(
    'div',
    'day-field',
    called,
    classed('div', 'day-set', input, ...touches, clear),
    fault,
  )
  const follow = (): void => {
    const text = day.putIn().get(name)?.text
    if (document.activeElement !== input) input.value = text ?? ''
    const wrong = text !== undefined && time() === undefined
    input.setAttribute('aria-invalid', String(wrong))
    fault.textContent = wrong ? words.noTime : ''
    clear.hidden = text === undefined
    field.classList.toggle('is-changed', text !== undefined && !wrong)
  }
  day.follow(follow)
  follow()
  return { field, time }
}

/** A time as it is printed: nobody finds another sum than the page. */
function printedSi({ text, si }: { readonly text: string; readonly si: number }): number {
  const read = readQuantity(text)
  return read.ok ? read.quantity.si : si
}

/** One time of a clock, with how far it is away; nothing where its length has no number. */
function showRow(row: HTMLElement, from: number, day: Day, now: Date): void {
  const length = nowOf(row.dataset['by'] ?? '', day)
  if (!length?.ok) return
  const long = printedSi(length)
  const then = row.dataset['before'] === undefined ? from + long : from - long
  const away = untilThen(then, timeOn(now))
  row
    .querySelector('.at')
    ?.replaceChildren(
      classed('b', 'day-at', timeWords(then, day)),
      ' ',
      classed('span', 'soft', awayWords(away, day)),
    )
  row.classList.toggle('is-past', away < -59)
}

/** A clock: times counted from one that somebody puts in. */
export function followClock(section: HTMLElement, day: Day, now: () => Date): () => void {
  const { clock = '' } = section.dataset
  const place = section.querySelector<HTMLElement>('.day-time')
  const { field, time } = timeField(`at.${clock}`, place?.dataset ?? {}, day, now)
  place?.replaceChildren(field)
  const rows = [...section.querySelectorAll<HTMLElement>('[data-by]')]
  return () => {
    const from = time()
    for (const row of rows) {
      row.hidden = from === undefined || !belongs(row, day)
      if (from !== undefined) showRow(row, from, day, now())
    }
  }
}
