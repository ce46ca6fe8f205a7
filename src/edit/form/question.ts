import { entryAbout, factAt } from '../../model/entry-about.ts'
import { type FactSpec, gearFields, gearSpec } from '../../model/fact-spec.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import {
  choicesOf,
  elementOf,
  isOptional,
  shapeOf,
  typeOf,
} from '../../validate/schema-advice/schema-keys.ts'
import { months } from '../../validate/schemas/words/calendar.ts'
import { formOf } from './text-forms.ts'

/** What an answer is, and so how it is typed. */
export type QuestionKind =
  | { readonly kind: 'text' | 'phone' | 'long-text' | 'file' }
  /** A number, or a text such as 3b. */
  | { readonly kind: 'revision' }
  | { readonly kind: 'number' | 'yes-no' | 'date' | 'time' }
  | { readonly kind: 'quantity'; readonly spec: FactSpec }
  /** The name of a fact, and a quantity of the fact that stands beside it. */
  | { readonly kind: 'fact' | 'fact-value' }
  | { readonly kind: 'procedure' }
  | { readonly kind: 'choice' | 'choices'; readonly choices: readonly string[] }
  | { readonly kind: 'texts' | 'dates' }
  /** Names with a share each. */
  | { readonly kind: 'shares' }
  | { readonly kind: 'list'; readonly fields: readonly Question[] }

/** Something that the facility file may say, and how it is asked for. */
export type Question = QuestionKind & {
  /** Where the answer stands; lists are passed without a number. */
  readonly path: readonly string[]
  /** The same inside its entry of a list; else the path. */
  readonly inside: readonly string[]
  /** Whether nothing works without it. */
  readonly needed: boolean
}

/** What a question is called, how it is answered, and an answer as it is typed. */
export type QuestionAbout = {
  readonly label: string
  readonly howTo: string | undefined
  readonly example: string | undefined
}

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** Kinds that are chosen, whose choices say what they are. */
const chosen: readonly string[] = ['choice', 'choices', 'yes-no', 'date', 'file']

/** How something is found out, without what only a file asks for. */
function saidHow({ kind }: Question, howTo: string | undefined): string | undefined {
  if (chosen.includes(kind)) return undefined
  const sentences = (howTo ?? '').split(/(?<=\.) /).filter((text) => !/quotes|this file/.test(text))
  const text = sentences.join(' ').trim()
  return text === '' ? undefined : text
}

/** Quotes that only a file needs, and brackets of a list. */
const typedExample = (example: string | undefined): string | undefined =>
  example?.replace(/^"(.*)"$/, '$1').replace(/^\[(.*)\]$/, '$1')

/** What is known of a question; one without any words is called by its entry. */
export function aboutQuestion(question: Question, system: UnitSystem): QuestionAbout {
  const { path } = question
  const about = entryAbout(path, system)
  const name = (path.at(-1) ?? '').replaceAll('-', ' ')
  return {
    label: sentence(about?.label ?? name),
    howTo: saidHow(question, about?.howTo),
    example: typedExample(about?.example),
  }
}

/** Entries whose kind the schema does not tell. */
const special: Readonly<Record<string, QuestionKind>> = {
  'measurements.of': { kind: 'fact' },
  'measurements.value': { kind: 'fact-value' },
  'notes.procedure': { kind: 'procedure' },
  'cushion.sieve.passing': { kind: 'shares' },
  revision: { kind: 'revision' },
  'binder.sides': { kind: 'choice', choices: ['2', '1'] },
  'climate.month': { kind: 'choice', choices: months.map((_month, i) => String(i + 1)) },
}

const isGear = (path: readonly string[]): boolean =>
  path[0] === 'equipment' && path.length === 2 && gearFields.includes(path[1] ?? '')

function specAt(path: readonly string[]): FactSpec | undefined {
  return isGear(path) ? gearSpec(path[1] ?? '') : factAt(path)
}

function listKind(path: readonly string[], schema: unknown): QuestionKind {
  const element = elementOf(schema)
  const choices = choicesOf(element)
  if (choices.length > 0) return { kind: 'choices', choices }
  if (typeOf(element) === 'object')
    return { kind: 'list', fields: fieldsOf(path, element, path.length) }
  return { kind: formOf(element) === 'date' ? 'dates' : 'texts' }
}

function kindOfEntry(path: readonly string[], schema: unknown): QuestionKind {
  const known = special[path.join('.')]
  if (known) return known
  const type = typeOf(schema)
  if (type === 'array') return listKind(path, schema)
  if (type === 'boolean') return { kind: 'yes-no' }
  if (type === 'number') return { kind: 'number' }
  const choices = choicesOf(schema)
  if (choices.length > 0) return { kind: 'choice', choices }
  const form = formOf(schema)
  if (form !== undefined) return { kind: form }
  const spec = type === 'string' ? undefined : specAt(path)
  return spec ? { kind: 'quantity', spec } : { kind: path.at(-1) === 'file' ? 'file' : 'text' }
}

/** The questions of a group, groups inside it included, in the order of the schema. */
function fieldsOf(
  path: readonly string[],
  schema: unknown,
  from: number,
  needed = true,
): readonly Question[] {
  return Object.entries(shapeOf(schema)).flatMap(([key, inner]) => {
    const at = [...path, key]
    const isNeeded = needed && !isOptional(inner)
    if (typeOf(inner) === 'object') return fieldsOf(at, inner, from, isNeeded)
    return [{ ...kindOfEntry(at, inner), path: at, inside: at.slice(from), needed: isNeeded }]
  })
}

/** Everything that a file may say, as questions, in the order of its schema. */
export const questionsOf = (schema: unknown): readonly Question[] => fieldsOf([], schema, 0)

/** The question at a path of a file, in which lists are passed with a number. */
export function questionAt(
  questions: readonly Question[],
  path: readonly (string | number)[],
): Question | undefined {
  const plain = path.filter((step) => typeof step === 'string').join('.')
  for (const question of questions) {
    const own = question.path.join('.')
    if (own === plain) return question
    if (!plain.startsWith(`${own}.`)) continue
    if (question.kind === 'list') return questionAt(question.fields, path)
    if (question.kind === 'shares') return question
  }
  return undefined
}
