import { type Question, questionsOf } from './question-card.ts'
import type { Lesson, Study } from './study.ts'
import { current } from './study.ts'

/** The lessons of a role as they stand on the page. */
export type Course = {
  readonly name: string
  readonly articles: readonly HTMLElement[]
  readonly lessons: readonly Lesson[]
  readonly questions: ReadonlyMap<string, readonly Question[]>
}

export const titleOf = (article: Element | undefined): string =>
  article?.querySelector('h3')?.textContent ?? ''

/** Reads what a role takes. */
export function courseOf(box: HTMLElement): Course {
  const articles = (box.dataset['lessons'] ?? '')
    .split(' ')
    .flatMap((id) => document.getElementById(id) ?? [])
  const questions = new Map(articles.map((article) => [article.id, questionsOf(article)]))
  return {
    name: titleOf(box),
    articles,
    lessons: articles.map(({ id }) => ({ id, questions: questions.get(id)?.length ?? 0 })),
    questions,
  }
}

/** The question at hand; undefined where a lesson is read. */
export function questionAt({ questions }: Course, study: Study): Question | undefined {
  const step = current(study)
  return step?.question === undefined ? undefined : questions.get(step.lesson)?.[step.question]
}
