import { isKeptNumber } from '../../model/records.ts'
import { faultsOf } from './checks.ts'
import type { Desk, Part } from './desk.ts'
import { faultWords } from './fault-words.ts'
import { fieldOf } from './kept.ts'
import { withoutUnit, withUnit } from './numbers.ts'

type Field = HTMLInputElement | HTMLTextAreaElement

const isTick = (field: Element): field is HTMLInputElement =>
  field instanceof HTMLInputElement && field.type === 'checkbox'

/** A text as it stands in its field: numbers without the unit that stands beside it. */
function shownText(name: string, text: string, { data }: Desk): string {
  const field = fieldOf(name)
  return isKeptNumber(field) ? withoutUnit(field, text, data.system) : text
}

/** A text as it is kept. */
function keptText(name: string, text: string, { data }: Desk): string {
  const field = fieldOf(name)
  return isKeptNumber(field) ? withUnit(field, text, data.system) : text
}

/** Ticks that are one answer: their words, between commas. */
const ticked = (group: Element): string =>
  [...group.querySelectorAll<HTMLInputElement>('input:checked')].map((t) => t.value).join(', ')

/** Writes what was changed. */
function follow(root: HTMLElement, desk: Desk): void {
  root.addEventListener('change', ({ target }) => {
    if (!(target instanceof Element)) return
    const group = target.closest<HTMLElement>('[data-name]')
    const name = group?.dataset['name']
    if (!group || name === undefined) return
    if (isTick(target)) desk.write(name, ticked(group))
    else desk.write(name, keptText(name, (target as Field).value, desk))
  })
  // One less and one more of what is counted.
  root.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('[data-step]') : null
    const field = button?.parentElement?.querySelector<HTMLInputElement>('input')
    const name = field?.dataset['name']
    if (!button || !field || name === undefined) return
    const now = Number.parseInt(field.value, 10) || 0
    desk.write(name, String(Math.max(0, now + Number(button.dataset['step']))))
  })
}

/** Says at a field what is wrong or odd with it. */
function tell(field: Field, words: string | undefined, isWrong: boolean): void {
  const line = document.getElementById(`${field.id}-said`)
  field.toggleAttribute('aria-invalid', false)
  if (isWrong) field.setAttribute('aria-invalid', 'true')
  field.classList.toggle('odd', words !== undefined && !isWrong)
  if (!line) return
  line.textContent = words ?? ''
  line.hidden = words === undefined
}

function showField(field: Field, desk: Desk): void {
  const name = field.dataset['name'] ?? ''
  const text = shownText(name, desk.kept()[name] ?? '', desk)
  // Whoever is writing there is not disturbed.
  if (field.value !== text && !(field === document.activeElement && field.value.trim() === text))
    field.value = text
}

/** All places to write: they hold what is kept of the day, and what is written there is kept. */
export function fieldsPart(root: HTMLElement, desk: Desk): Part {
  follow(root, desk)
  return {
    show: () => {
      const faults = new Map(faultsOf(desk.kept(), desk.data.usual).map((f) => [f.name, f]))
      for (const field of root.querySelectorAll<Field>('input[data-name], textarea[data-name]')) {
        showField(field, desk)
        const fault = faults.get(field.dataset['name'] ?? '')
        const isWrong = fault !== undefined && fault.is !== 'unusual' && fault.is !== 'apart'
        tell(field, fault && faultWords(fault, desk), isWrong)
      }
      for (const group of root.querySelectorAll<HTMLElement>('fieldset[data-name]')) {
        const said = (desk.kept()[group.dataset['name'] ?? ''] ?? '').split(', ')
        for (const tick of group.querySelectorAll<HTMLInputElement>('input'))
          tick.checked = said.includes(tick.value)
      }
    },
  }
}
