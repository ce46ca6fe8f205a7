import { element } from '../element.ts'
import { type Course, questionAt, titleOf } from './course.ts'
import { markChoices, type Question, showQuestion } from './question-card.ts'
import { onStage, put, type Room } from './room.ts'
import { shelf } from './shelf.ts'
import {
  answered,
  askedBefore,
  begin,
  current,
  goOn,
  resumed,
  type Study,
  tally,
  turned,
} from './study.ts'

/** Where somebody is: "Rakes: lesson 2 of 6, question 1 of 2". */
function placeWords({ name, lessons, questions }: Course, study: Study, { where }: Room): string {
  const step = current(study)
  if (!step) return ''
  if (step.again) return `${name}: ${where.dataset['again'] ?? ''}`
  const lesson = lessons.findIndex(({ id }) => id === step.lesson) + 1
  const said = put(where.dataset['lesson'], { lesson, lessons: lessons.length })
  if (step.question === undefined) return `${name}: ${said}`
  const asked = { question: step.question + 1, questions: questions.get(step.lesson)?.length ?? 0 }
  return `${name}: ${said}, ${put(where.dataset['question'], asked)}`
}

/** What the learner shows to whoever signs off: it stands on this page alone. */
function showResult(
  { name, articles }: Course,
  study: Study,
  { result, title, next, leave }: Room,
): void {
  const { questions, first } = tally(study)
  const one = (part: string) => result.querySelector<HTMLElement>(part)
  const [date, said, taken] = ['.date', '.first', '.taken'].map(one)
  title.textContent = `${name}: ${result.dataset['done'] ?? ''}`
  if (date) date.textContent = new Date().toLocaleDateString(document.documentElement.lang)
  if (said) said.textContent = put(said.dataset['first'], { right: first, questions })
  taken?.replaceChildren(...articles.map((article) => element('li', titleOf(article))))
  result.hidden = false
  next.hidden = true
  leave.textContent = leave.dataset['back'] ?? ''
}

/** Says whether the answer was right, and why; what was wrong comes back. */
function judge(question: Question, isRight: boolean, isLast: boolean, room: Room): void {
  const { form, submit, verdict, next } = room
  const { right = '', wrong, back = '', yours = '', isRight: rightOne = '' } = verdict.dataset
  const answer = (question.choices[question.right] ?? '').replace(/\.$/, '')
  markChoices(form, question, { yours, isRight: rightOne })
  verdict.textContent = isRight
    ? `${right} ${question.why}`
    : `${put(wrong, { answer })} ${question.why} ${back}`
  submit.hidden = true
  next.textContent = (isLast ? next.dataset['result'] : next.dataset['next']) ?? ''
  next.hidden = false
  next.focus()
}

/** Sets the page up for a step: a lesson to read, or a question with the drawing that it is about. */
function showStep(course: Course, now: Study, room: Room): void {
  const { study, where, title, form, submit, verdict, result, next, leave } = room
  const question = questionAt(course, now)
  verdict.textContent = ''
  form.hidden = question === undefined
  submit.hidden = false
  result.hidden = true
  next.hidden = question !== undefined
  next.textContent = next.dataset['ask'] ?? ''
  leave.textContent = leave.dataset['leave'] ?? ''
  where.textContent = placeWords(course, now, room)
  study.classList.toggle('asking', question !== undefined)
  const lesson = current(now)?.lesson
  const article = course.articles.find(({ id }) => id === lesson)
  const link = article?.querySelector('h3 a')?.cloneNode(true)
  title.replaceChildren(question || !link ? titleOf(article) : link)
  if (question) showQuestion(form, question, turned(question.choices.length, askedBefore(now)))
}

/** A lesson with its drawing, which may stand with another one. */
function onView(article: HTMLElement | undefined): readonly Element[] {
  const drawing = document.getElementById(article?.dataset['drawing'] ?? '')
  return [article, article?.contains(drawing) ? null : drawing].filter((e) => e instanceof Element)
}

/**
 * Takes somebody through a role's lessons, from where they stopped to the result.
 * @param key Under which the browser keeps how far they are.
 * @returns what ends it.
 */
export function take(course: Course, room: Room, key: string): () => void {
  const { stage, form, next, title } = room
  const { lessons, articles } = course
  let now = resumed(shelf.get(key), lessons) ?? begin(lessons)
  const show = onStage(stage)
  const step = (): void => {
    const at = current(now)
    show(onView(articles.find(({ id }) => id === at?.lesson)))
    showStep(course, now, room)
    shelf.set(key, at ? JSON.stringify(now) : undefined)
    if (!at) showResult(course, now, room)
    title.focus()
    scrollTo(0, 0)
  }
  const check = (event: Event): void => {
    event.preventDefault()
    const question = questionAt(course, now)
    const chosen = form.querySelector<HTMLInputElement>('input:checked')
    if (!question || !chosen) return
    const isRight = Number(chosen.value) === question.right
    now = answered(now, isRight)
    judge(question, isRight, now.at === now.steps.length - 1, room)
  }
  const forward = (): void => {
    now = goOn(now)
    step()
  }
  form.addEventListener('submit', check)
  next.addEventListener('click', forward)
  step()
  return () => {
    form.removeEventListener('submit', check)
    next.removeEventListener('click', forward)
    show([])
  }
}
