import { classed, element } from '../element.ts'

let made = 0

/** A name that no other element of the page has. */
export const newId = (): string => `form-${++made}`

/** A control that holds a text, whatever it looks like. */
export type Control = {
  /** What stands in the page. */
  readonly node: HTMLElement
  /** What has the focus, the label and the fault. */
  readonly inputs: readonly (HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement)[]
  readonly read: () => string
  readonly show: (typed: string) => void
  /** Whether a group of boxes, which has a legend instead of a label. */
  readonly isGroup: boolean
}

/** One line, or several. */
export function textControl(lines: number, mode = 'text'): Control {
  const input = lines > 1 ? element('textarea') : element('input')
  if (input instanceof HTMLTextAreaElement) input.rows = lines
  else input.type = 'text'
  input.inputMode = mode
  input.autocomplete = 'off'
  input.id = newId()
  return {
    node: input,
    inputs: [input],
    read: () => input.value,
    show: (typed) => {
      input.value = typed
    },
    isGroup: false,
  }
}

/** A year of two digits, as the browser's calendar keeps it: `27` is `0027` there. */
const shortYear = /^00(\d\d)(?=-)/

/**
 * A day by the browser's own calendar, where what stands there is a day. It says that something was
 * typed with the first digit of a year: until it is left, a year that begins with 0 is no answer.
 */
export function dayControl(typed: string): Control {
  const control = textControl(1)
  const [input] = control.inputs
  if (!(input instanceof HTMLInputElement) || !/^(?:\d{4}-\d\d-\d\d)?$/.test(typed)) return control
  input.type = 'date'
  let isTyping = false
  input.addEventListener('input', () => {
    isTyping = input.value.startsWith('0')
  })
  input.addEventListener('blur', () => {
    if (!isTyping) return
    isTyping = false
    input.value = input.value.replace(shortYear, '20$1')
    input.dispatchEvent(new Event('change', { bubbles: true }))
  })
  return { ...control, read: () => (isTyping ? '' : input.value) }
}

/** A day is typed in parts: what is put anew meanwhile would begin with the first of them again. */
export const isDayField = (node: EventTarget | null): boolean =>
  node instanceof HTMLInputElement && node.type === 'date'

/** A choice with its words. */
export type Choice = { readonly value: string; readonly said: string; readonly group?: string }

function optionsOf(choices: readonly Choice[]): readonly HTMLElement[] {
  const groups = new Map<string, HTMLElement>()
  return choices.flatMap(({ value, said, group }) => {
    const option = element('option', said)
    option.value = value
    if (group === undefined) return [option]
    const known = groups.get(group)
    if (known) {
      known.append(option)
      return []
    }
    const fresh = element('optgroup', option)
    fresh.label = group
    groups.set(group, fresh)
    return [fresh]
  })
}

/** One of many, from a list that opens. */
export function selectControl(choices: readonly Choice[], empty: string): Control {
  const select = element('select')
  select.id = newId()
  select.append(...optionsOf([{ value: '', said: empty }, ...choices]))
  return {
    node: select,
    inputs: [select],
    read: () => select.value,
    show: (typed) => {
      if (typed !== '' && ![...select.options].some((o) => o.value === typed))
        select.append(...optionsOf([{ value: typed, said: typed }]))
      select.value = typed
    },
    isGroup: false,
  }
}

/** Boxes of which one or several can be chosen. */
export function boxesControl(choices: readonly Choice[], type: 'radio' | 'checkbox'): Control {
  const name = newId()
  const boxes = choices.map(({ value, said }) => {
    const input = element('input')
    input.type = type
    input.name = name
    input.value = value
    return { input, label: classed('label', 'box', input, element('span', said)) }
  })
  return {
    node: classed('div', 'boxes', ...boxes.map(({ label }) => label)),
    inputs: boxes.map(({ input }) => input),
    read: () =>
      boxes
        .filter(({ input }) => input.checked)
        .map(({ input }) => input.value)
        .join(' '),
    show: (typed) => {
      const chosen = type === 'radio' ? [typed] : typed.split(' ')
      for (const { input } of boxes) input.checked = chosen.includes(input.value)
    },
    isGroup: true,
  }
}
