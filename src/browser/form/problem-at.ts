import { aboutQuestion, type Question, questionAt } from '../../edit/form/question.ts'
import { isLacking, worded } from '../../edit/form/understood.ts'
import { entryAbout } from '../../model/entry-about.ts'
import { fill } from '../../model/pattern.ts'
import type { Problem } from '../../model/problem.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { FormFile } from '../../validate/schemas/form.ts'
import type { Said } from './said.ts'

/** What must be known of a sitting to say what is wrong. */
export type Known = {
  readonly said: Said
  readonly questions: readonly Question[]
  readonly locale: () => Locale
  readonly worked: () => { readonly problems: readonly Problem[] } | undefined
}

/** Advice on how a file is written, which nobody can follow who sees questions alone. */
const ofFiles = /[{}]|\bentry \d|\bin quotes\b|\bkeys?\b|\bdelete the line\b/

/** What an entry of the file is called where it is asked for. */
export function calledAt(sitting: Known, at: Path): string {
  const { system } = sitting.locale()
  const question = questionAt(sitting.questions, at)
  if (question) return aboutQuestion(question, system).label
  const plain = at.filter((step) => typeof step === 'string')
  return entryAbout(plain, system)?.label ?? (plain.at(-1) ?? '').replaceAll('-', ' ')
}

/**
 * A problem of the file as somebody is told it who sees questions and no file.
 * @param what What its entry is called.
 */
export function problemOf(
  { code, message, hint }: Problem,
  what: string,
  { field }: FormFile['says'],
): string {
  if (isLacking(code) && what !== '') return fill(field.isMissing, { what })
  const said = worded(message, hint)
  return ofFiles.test(said) && what !== '' ? fill(field.misfit, { what }) : said
}

/** The same, called as it is asked for. */
export const problemSaid = (sitting: Known, problem: Problem): string =>
  problemOf(problem, calledAt(sitting, problem.path ?? []), sitting.said.form.says)

/**
 * What is wrong with an entry as the whole file sees it, in plain words.
 * @param isTyped Whether something is typed there: that it is missing was true before.
 */
export function problemAt(sitting: Known, at: Path, isTyped = false): string | undefined {
  const problems = sitting.worked()?.problems ?? []
  const found = problems.find(
    ({ path, code }) => path?.join('.') === at.join('.') && !(isTyped && isLacking(code)),
  )
  return found && problemSaid(sitting, found)
}
