import { element } from '../element.ts'

/** A question as it stands in its lesson. */
export type Question = {
  readonly ask: string
  readonly choices: readonly string[]
  /** Place of the right one, from 0. */
  readonly right: number
  readonly why: string
}

/** Reads the questions of a lesson, which stand there for everybody. */
export const questionsOf = (lesson: Element): readonly Question[] =>
  [...lesson.querySelectorAll<HTMLElement>('.question')].map((box) => ({
    ask: box.querySelector('p')?.textContent ?? '',
    choices: [...box.querySelectorAll('.choices span')].map((c) => c.textContent ?? ''),
    right: Number(box.dataset['right']) - 1,
    why: box.querySelector('.why')?.textContent ?? '',
  }))

/** Puts a question and its choices into the form; the first choice takes the focus. */
export function showQuestion(
  form: HTMLFormElement,
  { ask, choices }: Question,
  order: readonly number[],
): void {
  const legend = form.querySelector('legend')
  if (legend) legend.textContent = ask
  const list = order.map((place, i) => {
    const input = element('input')
    input.type = 'radio'
    input.name = 'choice'
    input.value = String(place)
    input.id = `choice-${i}`
    input.required = true
    const label = element('label', input, element('span', choices[place] ?? ''))
    label.htmlFor = input.id
    return label
  })
  form.querySelector('.options')?.replaceChildren(...list)
  form.hidden = false
}

/** Marks the right choice and the chosen one, in words too. */
export function markChoices(
  form: HTMLFormElement,
  { right }: Question,
  words: { readonly yours: string; readonly isRight: string },
): void {
  for (const input of form.querySelectorAll<HTMLInputElement>('input')) {
    const label = input.closest('label')
    const isRight = Number(input.value) === right
    const said = isRight ? words.isRight : input.checked ? words.yours : ''
    if (said !== '') label?.append(element('b', ` (${said})`))
    label?.classList.toggle('right', isRight)
    input.disabled = true
  }
}
