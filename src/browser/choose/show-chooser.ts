import { answering, type Chosen, countsOf, narrow, nextQuestion } from './narrow.ts'
import { tellApart } from './tell-apart.ts'

/** Of no more than this many, what is left is shown rather than asked further. */
const askedFrom = 3

/** A question on the page, its lists of links read as what each answer fits. */
function readQuestion(details: HTMLDetailsElement) {
  const answers = [...details.querySelectorAll<HTMLElement>('.answers > li')].map((item) => {
    const words = item.querySelector('b')
    const button = document.createElement('button')
    const count = document.createElement('span')
    button.append(words?.textContent ?? '', ' ', count)
    const links = [...item.querySelectorAll('a')].map((a) => decodeURIComponent(a.hash.slice(1)))
    item.replaceChildren(button)
    return { says: words?.textContent ?? '', button, count, fits: links }
  })
  return { details, answered: details.querySelector('.answered'), answers }
}

/**
 * Makes the lists of the page "What do you see?" into questions: each answer leaves less, and what
 * is left is told apart by what can be measured. Everything is read from the page as it stands.
 */
export function showChooser(page: ParentNode): void {
  const chooser = page.querySelector<HTMLElement>('.chooser')
  const status = chooser?.querySelector<HTMLElement>('.fits')
  const again = chooser?.querySelector<HTMLButtonElement>('.again')
  if (!chooser || !status || !again) return
  const asked = [...chooser.querySelectorAll<HTMLDetailsElement>('.ask')].map(readQuestion)
  const symptoms = [...page.querySelectorAll<HTMLDetailsElement>('details.symptom')]
  const all = symptoms.map(({ id }) => id)
  const questions = asked.map(({ answers }) => answers.map(({ fits }) => fits))
  let chosen: Chosen = asked.map(() => undefined)

  const show = (): void => {
    const left = new Set(narrow(questions, chosen, all))
    for (const [i, { answers, answered }] of asked.entries()) {
      const counts = countsOf(questions, chosen, all, i)
      for (const [at, { button, count }] of answers.entries()) {
        button.setAttribute('aria-pressed', String(chosen[i] === at))
        button.disabled = counts[at] === 0
        count.textContent = String(counts[at])
      }
      if (answered) answered.textContent = answers[chosen[i] ?? -1]?.says ?? ''
    }
    const shown = symptoms.filter(({ id }) => left.has(id))
    for (const symptom of symptoms) symptom.hidden = !left.has(symptom.id)
    const isAsking = chosen.some((answer) => answer !== undefined)
    again.hidden = !isAsking
    const { fits = '' } = status.dataset
    status.textContent = isAsking
      ? fits.replace('{count}', String(left.size)).replace('{all}', String(all.length))
      : ''
    tellApart(chooser, isAsking ? shown : [])
  }

  const choose = (question: number, answer: number): void => {
    chosen = answering(chosen, question, chosen[question] === answer ? undefined : answer)
    show()
    if (chosen[question] === undefined) return
    const left = narrow(questions, chosen, all).length
    const next = left > askedFrom ? nextQuestion(questions, chosen, all) : undefined
    const at = asked[question]
    if (at) at.details.open = false
    const following = next === undefined ? undefined : asked[next]
    if (following)
      following.details.open = true
      // The button that was touched is hidden now; who works by keyboard goes on from the question.
    ;(following ?? at)?.details.querySelector('summary')?.focus()
  }

  for (const [question, { answers }] of asked.entries())
    for (const [answer, { button }] of answers.entries())
      button.addEventListener('click', () => choose(question, answer))
  again.addEventListener('click', () => {
    chosen = asked.map(() => undefined)
    show()
    for (const [i, { details }] of asked.entries()) details.open = i === 0
    asked[0]?.details.querySelector('summary')?.focus()
  })
  chooser.classList.add('asks')
  const [first] = asked
  if (first) first.details.open = true
  show()
}
