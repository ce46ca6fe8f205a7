import { answerChanges } from '../../../src/edit/form/answers.ts'
import { answered, draftOf } from '../../../src/edit/form/draft.ts'
import { type Question, questionAt, questionsOf } from '../../../src/edit/form/question.ts'
import { understand } from '../../../src/edit/form/understand.ts'
import { factCalled } from '../../../src/model/fact-called.ts'
import { factSpec } from '../../../src/model/fact-spec.ts'
import { hasErrors } from '../../../src/model/problem.ts'
import { type Path, readYaml } from '../../../src/read/read-yaml.ts'
import { checkFacility } from '../../../src/validate/check-facility.ts'
import { facility } from '../../../src/validate/schemas/facility.ts'
import type { Chance } from '../chance.ts'
import { slipIn } from '../judge/slips.ts'
import { hostileTexts, oddDays, oddNumbers } from '../mutations/hostile.ts'
import { saidByChance } from '../mutations/said.ts'
import type { Subject } from './subject.ts'

const questions = questionsOf(facility)

/** Places of all answers of a facility, by what it says. */
function placesIn(value: unknown, at: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [at]
  const entries = Array.isArray(value) ? [...value.entries()] : Object.entries(value)
  return entries.flatMap(([key, inner]) => placesIn(inner, [...at, key]))
}

/** Kinds of answers that are typed, not chosen and not given part by part. */
const typedKinds = [
  'quantity',
  'number',
  'revision',
  'text',
  'phone',
  'long-text',
  'texts',
  'date',
  'dates',
  'time',
  'fact',
  'fact-value',
]

const isTyped = (path: Path): boolean => {
  const question = questionAt(questions, path)
  return question !== undefined && typedKinds.includes(question.kind)
}

const typedByChance = (chance: Chance): string =>
  chance.happens(0.6)
    ? saidByChance(chance)
    : chance.oneOf(chance.oneOf([hostileTexts, oddNumbers, oddDays]))

const measured = (data: unknown, at: Path) => {
  const [list, i] = at
  if (list !== 'measurements') return undefined
  const of = (data as { measurements?: readonly { of?: string }[] }).measurements?.[Number(i)]?.of
  const path = of === undefined ? undefined : (factCalled(of) ?? of)
  return path === undefined ? undefined : factSpec(path as never)
}

/**
 * Something typed into a field of the form: told what is wrong with it, or written so that the file
 * is what it was but for this.
 */
export const answers: Subject = async ({ facilities }, chance) => {
  const text = facilities.shaken.get('facility.yaml')?.toString('utf8') ?? ''
  const data = readYaml({ path: 'facility.yaml', text }).value?.data
  const at = chance.oneOf(placesIn(data).filter(isTyped))
  const question = questionAt(questions, at) as Question
  const typed = typedByChance(chance)
  const system = chance.oneOf(['us', 'metric'] as const)
  const locale = { system, currency: system === 'us' ? 'USD' : 'EUR' }
  const asked = { question, at, locale, fact: measured(data, at), copied: 'copied' }
  const found = understand(asked, typed)
  const seen = { file: at.join('.'), by: [JSON.stringify(typed.slice(0, 60))] }
  const slips = [found.shown, found.fault].flatMap((said) => {
    const slip = said === undefined ? undefined : slipIn(said)
    return slip === undefined || slipIn(typed) ? [] : [`says "${slip}": ${said}`]
  })
  if (found.fault !== undefined) return { ...seen, ending: 'refused', faults: slips }
  const again = understand(asked, found.typed)
  const twice =
    again.fault === undefined && JSON.stringify(again.value) === JSON.stringify(found.value)
      ? []
      : [`means another thing when it is left: ${found.typed}: ${again.fault ?? again.value}`]
  const made = answered(draftOf(text), answerChanges(data, at, found.value), at.join('.'))
  if (!made.ok) return { ...seen, ending: 'refused', faults: [...slips, ...twice] }
  return {
    ...seen,
    ending: 'made',
    faults: [...slips, ...twice, ...faultsOfFile(made.draft.text, at, found.value)],
  }
}

/** What the form took and the file refuses as no value of this entry. */
function faultsOfFile(text: string, at: Path, value: unknown): readonly string[] {
  const read = readYaml({ path: 'facility.yaml', text })
  if (!read.value || hasErrors(read.problems)) return ['the file cannot be read any more']
  const problems = checkFacility(read.value).problems.filter(
    ({ code, path, severity }) =>
      severity === 'error' &&
      value !== undefined &&
      /^schema\//.test(code) &&
      path?.join() === at.join(),
  )
  return problems.map(
    ({ code, message }) => `taken by the form, refused by the file (${code}): ${message}`,
  )
}
