import { isDay } from '../../model/day.ts'
import { degreesMeant } from '../../model/degrees.ts'
import { factCalled } from '../../model/fact-called.ts'
import { type FactSpec, factSpec } from '../../model/fact-spec.ts'
import { asSaid, inFigures, withoutAbout } from '../../model/quantity/as-said.ts'
import type { Locale } from '../../model/quantity/format-quantity.ts'
import type { Path } from '../../read/read-yaml.ts'
import { printable } from '../../read/unprintable.ts'
import { isInvented } from '../../validate/facility/invented.ts'
import { dateMeant } from '../../validate/schema-advice/date-meant.ts'
import { schemaAt } from '../../validate/schema-advice/schema-keys.ts'
import { facility } from '../../validate/schemas/facility.ts'
import type { Question } from './question.ts'
import { understandQuantity } from './typed-quantity.ts'
import { understandTime } from './typed-time.ts'
import { type Understood, worded } from './understood.ts'

/** What understanding must know beside the question. */
export type Asked = {
  readonly question: Question
  /** Where the answer stands in the file. */
  readonly at: Path
  readonly locale: Locale
  /** Of the value of a measurement: what was measured. */
  readonly fact?: FactSpec | undefined
  /** What is said of something that was left over from a demo; nothing where the file is one. */
  readonly copied?: string | undefined
  /** Of the fair: what a day without a year is taken to be in. */
  readonly fairYear?: string | undefined
}

type Parsed = {
  readonly success: boolean
  readonly error?: { readonly issues: readonly Issue[] }
}
type Issue = {
  readonly code: string
  readonly message: string
  readonly minimum?: unknown
  readonly maximum?: unknown
  readonly expected?: unknown
}

function faultOf({ code, message, minimum, maximum, expected }: Issue): string {
  const isOwn = !/^(?:Too (?:big|small)|Invalid)/.test(message)
  if (isOwn) return worded(`this should be ${message}`)
  if (code === 'too_big') return `At most ${String(maximum)}.`
  if (code === 'too_small') return `At least ${String(minimum)}.`
  return expected === 'int' ? 'This should be a whole number.' : 'This should be a number.'
}

/** What the schema has against a value. */
function schemaFault(at: Path, value: unknown): string | undefined {
  const schema = schemaAt(facility, at) as { safeParse?: (value: unknown) => Parsed } | undefined
  const issue = schema?.safeParse?.(value).error?.issues[0]
  return issue && faultOf(issue)
}

const checked = (at: Path, value: string | number, typed: string): Understood => {
  const fault = schemaFault(at, value)
  return fault === undefined ? { value, typed } : { value, typed, fault }
}

/** A date in any usual way of writing it; two readings are asked about. */
function understandDate(typed: string, { fairYear }: Asked): Understood {
  const text = typed.trim()
  if (text === '' || isDay(text)) return { value: text === '' ? undefined : text, typed: text }
  const advice = dateMeant(text, fairYear)
  const meant = advice?.match(/\d{4}-\d\d-\d\d/g) ?? []
  if (meant.length === 1 && meant[0] !== undefined)
    return { value: meant[0], typed: meant[0], shown: `${text} = ${meant[0]}` }
  const fault = worded(advice ?? 'this should be a date such as 2027-08-03')
  return { value: text, typed: text, fault }
}

/** The number of `10 races` and `ten races`. */
const countIn = (text: string): string | undefined =>
  /^(\d+(?:\.\d+)?)(?:\s*[a-z][a-z ]*)?$/i.exec(inFigures(text) ?? asSaid(text))?.[1]

function understandNumber({ at }: Asked, typed: string): Understood {
  const name = String(at.at(-1))
  const text = /itude$/.test(name) ? degreesMeant(typed) : typed.trim().replace('−', '-')
  const number = Number(text.replace(/[°,]/g, ''))
  const counted = /itude$/.test(name) ? undefined : countIn(text)
  if (counted !== undefined && counted !== text)
    return { ...checked(at, Number(counted), counted), shown: `${text} = ${counted}` }
  if (text === '' || Number.isNaN(number))
    return text === ''
      ? { value: undefined, typed: text }
      : { value: text, typed: text, fault: 'This should be a number.' }
  return checked(at, number, text)
}

const lines = (typed: string): readonly string[] =>
  typed
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')

function understandLines(asked: Asked, typed: string): Understood {
  const { question, at } = asked
  const each = lines(typed).map((line) =>
    question.kind === 'dates' ? understandDate(line, asked) : checked([...at, 0], line, line),
  )
  const fault = each.find((one) => one.fault !== undefined)?.fault
  const value = each.flatMap((one) => (typeof one.value === 'string' ? [one.value] : []))
  const all = {
    value: value.length === 0 ? undefined : value,
    typed: each.map((one) => one.typed).join('\n'),
  }
  return fault === undefined ? all : { ...all, fault }
}

const isNumber = (text: string): boolean => /^\d+$/.test(text)

function understandFact({ at, question, locale, fact }: Asked, typed: string): Understood {
  if (question.kind === 'fact') return { value: factCalled(typed) ?? typed, typed }
  return fact ? understandQuantity(fact, typed, locale) : checked(at, typed, typed)
}

/** What somebody said who does not know it: it is left out. */
const notKnown =
  /^(?:unknown|(?:i |we )?(?:do not|don['’]?t) know(?: (?:it|yet|it yet))?|(?:i['’]?m |i am |we are )?not sure(?: yet)?|no idea|not known(?: yet)?|nobody knows(?: (?:it|yet|it yet))?|not measured(?: yet)?|tbd|n\/?a|\?+)\.?$/i

/** What was meant by something typed, as the file will say it; what is of a demo is refused. */
export function understand(asked: Asked, typed: string): Understood {
  const found = meantAbout(asked, printable(typed))
  const { at, copied } = asked
  const values = Array.isArray(found.value) ? found.value : [found.value]
  return copied !== undefined && values.some((value) => isInvented(at, value))
    ? { ...found, fault: copied }
    : found
}

const rounded: readonly string[] = ['number', 'time']

/** `about 6` races are 6: what is counted takes one number, and whoever answers has no better one. */
function meantAbout(asked: Asked, typed: string): Understood {
  const text = typed.trim()
  const exact = rounded.includes(asked.question.kind) ? withoutAbout(text).text : text
  const found = meant(asked, exact === text ? typed : exact)
  if (exact === text || found.value === undefined || found.fault !== undefined) return found
  return { ...found, shown: `${text} = ${found.shown?.split(' = ').at(1) ?? found.typed}` }
}

function meant(asked: Asked, typed: string): Understood {
  const { question, at, locale } = asked
  const text = typed.trim()
  if (text === '') return { value: undefined, typed: '' }
  if (notKnown.test(text)) return { value: undefined, typed: '', isNotKnown: true }
  switch (question.kind) {
    case 'quantity':
      return understandQuantity(question.spec, text, locale)
    case 'fact':
    case 'fact-value':
      return understandFact(asked, text)
    case 'number':
      return understandNumber(asked, text)
    case 'date':
      return understandDate(text, asked)
    case 'time':
      return understandTime(
        text,
        at.at(-1),
        'This should be a time of day such as 1:30 PM or 13:30.',
      )
    case 'texts':
    case 'dates':
      return understandLines(asked, typed)
    case 'choice':
    case 'revision':
      return { value: isNumber(text) ? Number(text) : text, typed: text }
    case 'yes-no':
      return { value: text === 'true', typed: text }
    case 'choices':
      return { value: text.split(' '), typed: text }
    case 'shares':
    case 'list':
      throw new RangeError(`${at.join('.')} is answered part by part`)
    default:
      return checked(at, text, text)
  }
}

/** A value of the file as its field shows it. */
export function typedOf({ kind }: Question, value: unknown): string {
  if (value === undefined || value === null) return ''
  if (Array.isArray(value)) return value.join(kind === 'choices' ? ' ' : '\n')
  return typeof value === 'object' ? '' : String(value)
}

/** The quantity that a measurement is of. */
export const measuredFact = (of: unknown): FactSpec | undefined =>
  typeof of === 'string' ? factSpec(factCalled(of) ?? of) : undefined
