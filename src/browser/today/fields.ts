import type { DayFact } from '../../model/manual/today.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import { styleOf, toUnit } from '../../model/quantity/format-quantity.ts'
import { findUnit } from '../../model/quantity/units.ts'
import { button, classed, element } from '../element.ts'
import type { Day } from './day.ts'
import { put } from './said.ts'

let made = 0

/** A name that no other element of the page has. */
export const newId = (): string => `day-${++made}`

/** One touch more or less, kept to whole steps and to what can be. */
function stepped(fact: DayFact, by: 1 | -1, day: Day): string | undefined {
  const { path, kind, step, range } = fact
  const known = day.engine().facts.get(path)
  const { unit } = styleOf(kind, day.locale.system)
  const from = known ? toUnit(known.si, unit) : toUnit(range[0], unit)
  const steps = from / step
  const next = (by > 0 ? Math.floor(steps + 1e-6) + 1 : Math.ceil(steps - 1e-6) - 1) * step
  const [low, high] = range.map((si) => toUnit(si, unit)) as [number, number]
  const value = Math.min(high, Math.max(low, next))
  const offset = unit === '' ? 0 : (findUnit(unit)?.offset ?? 0)
  const factor = (range[1] - range[0]) / (high - low)
  return formatExact((value + offset) * factor, kind, day.locale, 'prose')
}

/** What is wrong with what was typed, and what can be. */
function faultWords(fact: DayFact, day: Day): string {
  const { words } = day.file
  const why = day.fault(fact.path)
  const [low = '', high = ''] = fact.range.map((si) =>
    formatExact(si, fact.kind, day.locale, 'prose'),
  )
  const example = fact.said || high
  if (why === 'outside') return put(words.outside, { low, high })
  return why === undefined ? '' : put(words[why], { example })
}

/** A number pad has no letters: fractions and times of day need the whole keyboard. */
const modeOf = (fact: DayFact, day: Day): string =>
  ['fraction', 'clock'].includes(styleOf(fact.kind, day.locale.system).form) ? 'text' : 'decimal'

function inputOf(fact: DayFact, day: Day): HTMLInputElement {
  const input = element('input')
  input.id = newId()
  input.type = 'text'
  input.inputMode = modeOf(fact, day)
  input.autocomplete = 'off'
  input.setAttribute('enterkeyhint', 'done')
  input.addEventListener('focus', () => input.select())
  input.addEventListener('input', () => day.put(fact.path, input.value))
  // As it is understood, once somebody has ended typing.
  input.addEventListener('change', () => {
    if (day.fault(fact.path) === undefined) input.value = day.text(fact.path)
  })
  input.addEventListener('keydown', ({ key }) => {
    if (key === 'Enter') input.blur()
  })
  return input
}

function stepButton(words: string, sign: string, act: () => void): HTMLButtonElement {
  const made = button(sign, act)
  made.setAttribute('aria-label', words)
  return made
}

/**
 * A field for a fact of the day, with less and more beside it: what is put in stands in it, what the
 * manual says below.
 * @param isBare Its label stands beside it already.
 */
export function fieldFor(fact: DayFact, day: Day, isBare = false): HTMLElement {
  const { words } = day.file
  const { path, label } = fact
  const input = inputOf(fact, day)
  const step = (by: 1 | -1) => () => {
    const next = stepped(fact, by, day)
    if (next !== undefined) day.put(path, next)
    input.value = day.text(path)
  }
  const name = element('label', label)
  name.htmlFor = input.id
  if (isBare) name.className = 'unseen'
  const fault = classed('p', 'day-fault')
  fault.id = `${input.id}-fault`
  input.setAttribute('aria-describedby', fault.id)
  const said = element(
    'span',
    `${words.manual} `,
    classed('b', 'whole', fact.said || words.notKnown),
  )
  const undo = button(words.undo, () => {
    day.undo(path)
    input.focus()
  })
  undo.setAttribute('aria-label', put(words.undoOne, { label }))
  const was = classed('p', 'day-printed', said, ' ', undo)
  const box = classed(
    'div',
    'day-field',
    name,
    classed(
      'div',
      'day-set',
      stepButton(put(words.less, { label }), '−', step(-1)),
      input,
      stepButton(put(words.more, { label }), '+', step(1)),
    ),
    fault,
    was,
  )
  const follow = (): void => {
    const typed = day.putIn().get(path)
    const wrong = faultWords(fact, day)
    if (document.activeElement !== input) input.value = wrong ? (typed?.text ?? '') : day.text(path)
    input.setAttribute('aria-invalid', String(wrong !== ''))
    fault.textContent = wrong
    box.classList.toggle('is-changed', typed !== undefined)
    was.hidden = typed === undefined
  }
  day.follow(follow)
  follow()
  return box
}
