import { dateWithYear } from '../../../compose/dates.ts'
import { valueAt } from '../../../edit/form/data.ts'
import { aboutQuestion, type Question } from '../../../edit/form/question.ts'
import { isDay } from '../../../model/day.ts'
import { factCalled } from '../../../model/fact-called.ts'
import { factSpec } from '../../../model/fact-spec.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { choiceSaid } from '../said.ts'
import type { Sitting } from '../sitting.ts'
import type { ListQuestion } from './list.ts'

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** An answer as it is read in a line. */
function said(sitting: Sitting, question: Question, value: unknown): string {
  if (question.kind === 'choice') return choiceSaid(sitting.said, question, String(value))
  if (question.kind === 'choices' && Array.isArray(value))
    return value.map((v) => choiceSaid(sitting.said, question, String(v))).join('; ')
  if (question.kind === 'fact') {
    const spec = factSpec(factCalled(String(value)) ?? String(value))
    return spec?.label ?? String(value)
  }
  if (question.kind === 'procedure')
    return (
      sitting.worked()?.manual?.procedures.find(({ id }) => id === value)?.title ?? String(value)
    )
  if (question.kind === 'yes-no')
    return value === true ? aboutQuestion(question, sitting.locale().system).label : ''
  if (question.kind === 'number')
    return `${aboutQuestion(question, sitting.locale().system).label}: ${String(value)}`
  if (question.kind === 'date' && isDay(String(value)))
    return dateWithYear(String(value), {
      locale: sitting.locale(),
      library: sitting.said.library,
    })
  if (Array.isArray(value)) return value.join(', ')
  return typeof value === 'object' ? '' : String(value)
}

/** What names an entry, by its list; else its first answer does. */
const titles: Readonly<Record<string, string>> = { equipment: 'name', 'oval.marks': 'name' }

/** What is said of an entry besides, by its list; else its first answers. */
const told: Readonly<Record<string, readonly string[]>> = {
  equipment: ['can', 'from', 'owner', 'days'],
  'cushion.sieve': ['by'],
  'race-days': ['first-post', 'races'],
}

/** So much of an entry stands in a line. */
const most = 4

/** An entry of a list in a line: what names it, and what else it says first. */
export function summaryOf(sitting: Sitting, question: ListQuestion, at: Path) {
  const { data } = sitting.draft()
  const answers = question.fields.flatMap((field) => {
    const value = valueAt(data, [...at, ...field.inside])
    const text = value === undefined ? '' : said(sitting, field, value)
    return text === '' ? [] : [{ name: field.inside.join('.'), text }]
  })
  const named = titles[question.path.join('.')]
  const names = told[question.path.join('.')]
  const title = answers.find(({ name }) => name === named) ?? answers[0]
  const rest = answers
    .filter((answer) => answer !== title && (names?.includes(answer.name) ?? true))
    .slice(0, most)
  return {
    title: sentence(title?.text ?? ''),
    about: rest.map(({ text }) => text).join(' · '),
  }
}
