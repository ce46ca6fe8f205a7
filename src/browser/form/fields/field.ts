import { answerChanges } from '../../../edit/form/answers.ts'
import { textAt, valueAt } from '../../../edit/form/data.ts'
import { isDayTwice } from '../../../edit/form/day-twice.ts'
import { measuredAt } from '../../../edit/form/measured.ts'
import { aboutQuestion, type Question } from '../../../edit/form/question.ts'
import { standsIn } from '../../../edit/form/stands-in.ts'
import { measuredFact, typedOf, understand } from '../../../edit/form/understand.ts'
import type { Understood } from '../../../edit/form/understood.ts'
import type { Value } from '../../../edit/written.ts'
import { fill } from '../../../model/pattern.ts'
import { formatExact } from '../../../model/quantity/format-exact.ts'
import { parseQuantity } from '../../../model/quantity/parse-quantity.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { isDemo } from '../../../validate/facility/demos.ts'
import { fairYear } from '../../../validate/fair-year.ts'
import { button, classed, element } from '../../element.ts'
import { type Control, newId } from '../controls.ts'
import { problemAt } from '../problem-at.ts'
import type { Sitting } from '../sitting.ts'
import { controlOf } from './control-of.ts'
import { measureBox } from './measure-box.ts'

/** How a question is put where it stands. */
export type Put = {
  readonly question: Question
  readonly at: Path
  /** Instead of its own: where the question has been put already. */
  readonly label?: string | undefined
  readonly howTo?: string | undefined
  /** Whether the label is read out alone, since the question stands above. */
  readonly isAsked?: boolean
  /** What happens until it is answered, where nothing is reckoned with. */
  readonly until?: (() => string) | undefined
  /** Whether no example is shown. */
  readonly isPlain?: boolean
  /** Instead of writing the answer at its place. */
  readonly write?: (value: Value | undefined) => boolean
  /** What is typed and stands in no file yet. */
  readonly kept?: () => string
  /** Takes "don't know" where the question has a box for it; else the field says what became of it. */
  readonly unknown?: ((step: string) => void) | undefined
  /** What the answers to it are called as steps, instead of its place. */
  readonly step?: string
}

/** Anything of a screen that follows what is typed elsewhere. */
export type Part = { readonly node: HTMLElement; readonly refresh: () => void }

/** What a field shows: the measurement that goes before what is stated, else the answer. */
function shownAt(sitting: Sitting, { question, at, kept }: Put): string {
  const { data } = sitting.draft()
  const stated = measuredAt(data, at)?.value ?? typedOf(question, valueAt(data, at))
  return stated === '' ? (kept?.() ?? '') : stated
}

const isExample = (data: unknown): boolean =>
  isDemo({ id: textAt(data, ['id']) ?? '', name: textAt(data, ['name']) ?? '' })

function understood(sitting: Sitting, { question, at }: Put, typed: string): Understood {
  const { data } = sitting.draft()
  const of = question.kind === 'fact-value' ? textAt(data, [...at.slice(0, -1), 'of']) : undefined
  const copied = isExample(data) ? undefined : sitting.said.form.says.field.copied
  return understand(
    {
      question,
      at,
      locale: sitting.locale(),
      fact: measuredFact(of),
      copied,
      fairYear: fairYear(data),
    },
    typed,
  )
}

/** Ends of the range, in the units of the fair. */
function rangeSaid(sitting: Sitting, question: Question): string {
  if (question.kind !== 'quantity') return ''
  const [low = '', high = ''] = question.spec.range.map((text) => {
    const read = parseQuantity(text, { plain: true })
    return read.ok
      ? formatExact(read.quantity.si, question.spec.kind, sitting.locale(), 'typed')
      : text
  })
  return fill(sitting.said.form.says.field.between, { low, high })
}

/** What is reckoned with until there is an answer. */
function untilSaid(sitting: Sitting, { question, at, until }: Put): string {
  const { field } = sitting.said.form.says
  if (until !== undefined) return until()
  const found = standsIn(question, sitting.draft().data, at, sitting.locale().system)
  return found
    ? fill(found.estimate ? field.estimate : field.untilRule, { value: found.value })
    : ''
}

/** The lines below a field: what was understood, what is wrong, what stands in. */
function linesOf() {
  const shown = classed('p', 'understood')
  const fault = classed('p', 'fault')
  const until = classed('p', 'until')
  const measured = classed('p', 'measured')
  shown.id = newId()
  fault.id = newId()
  return { shown, fault, until, measured }
}

const put = (line: HTMLElement, text: string): void => {
  line.textContent = text
  line.hidden = text === ''
}

type Lines = ReturnType<typeof linesOf>

/** Marks the control as faulty for whoever cannot see the line. */
function mark(control: Control, lines: Lines, isFaulty: boolean): void {
  for (const input of control.inputs) {
    if (isFaulty) input.setAttribute('aria-invalid', 'true')
    else input.removeAttribute('aria-invalid')
    input.setAttribute('aria-describedby', `${lines.fault.id} ${lines.shown.id}`)
  }
}

function refreshed(
  sitting: Sitting,
  asked: Put,
  control: Control,
  lines: Lines,
  { refused, told }: { readonly refused?: string | undefined; readonly told: string },
): void {
  const { field } = sitting.said.form.says
  const typed = control.read()
  const found = understood(sitting, asked, typed)
  const elsewhere = typed.trim() === '' ? undefined : problemAt(sitting, asked.at, true)
  const twice = isDayTwice(sitting.draft().data, asked.at) ? field.twice : undefined
  const fault = found.fault ?? refused ?? twice ?? elsewhere
  const measured = measuredAt(sitting.draft().data, asked.at)
  put(lines.shown, found.shown ?? told)
  put(lines.fault, fault === undefined ? '' : fill(field.lookAgain, { fault }))
  put(lines.until, found.value === undefined ? untilSaid(sitting, asked) : '')
  put(
    lines.measured,
    measured
      ? `${fill(field.measured, { date: measured.date, name: measured.by })} ${field.measuredAbout}`
      : '',
  )
  mark(control, lines, fault !== undefined)
}

/** The time zone of this computer, which mostly is that of the fair. */
function zoneOffer(sitting: Sitting, { at }: Put, control: Control): readonly HTMLElement[] {
  const { timeZone } = new Intl.DateTimeFormat().resolvedOptions()
  const isAsked = at.join('.') === 'place.time-zone' && control.read() === ''
  if (!isAsked || !timeZone.includes('/')) return []
  const take = button(fill(sitting.said.form.says.field.zone, { zone: timeZone }), () => {
    sitting.answer([{ path: at, value: timeZone }], '')
    sitting.reshape()
  })
  return [take]
}

/** A table of this computer, for a page that has no folder of its own. */
function addOffer(sitting: Sitting, { question, at }: Put): readonly HTMLElement[] {
  const { host } = sitting
  const { field } = sitting.said.form.says
  if (question.kind !== 'file') return []
  if (!host.add) return [classed('p', 'how', field.fileFolder)]
  const add = button(field.fileAdd, async () => {
    const added = await host.add?.()
    if (!added) return
    sitting.takeAdded(added)
    sitting.answer([{ path: at, value: added.name }], '')
    sitting.reshape()
  })
  return [add]
}

/** What stands beside a control: an example, and a box for whoever does not know. */
function beside(sitting: Sitting, asked: Put, control: Control): readonly HTMLElement[] {
  const { field } = sitting.said.form.says
  const { question } = asked
  const { example } = aboutQuestion(question, sitting.locale().system)
  const isTyped = !control.isGroup && !(control.inputs[0] instanceof HTMLSelectElement)
  const isDay = question.kind === 'date' || question.kind === 'fact-value'
  const such =
    example !== undefined && asked.isPlain !== true && isTyped && !isDay && control.read() === ''
      ? [classed('span', 'such', fill(field.such, { example }))]
      : []
  return [...such, ...zoneOffer(sitting, asked, control), ...addOffer(sitting, asked)]
}

function howSaid(sitting: Sitting, asked: Put): string {
  const own = aboutQuestion(asked.question, sitting.locale().system).howTo
  const lines = ['texts', 'dates'].includes(asked.question.kind)
    ? sitting.said.form.says.field.lines
    : ''
  const range = asked.isAsked ? '' : rangeSaid(sitting, asked.question)
  return [asked.howTo ?? own ?? '', range, lines].filter((t) => t !== '').join(' ')
}

/** Answers of which an example is longer need the whole line. */
const mostLetters = 24

const isLong = (example = ''): boolean => example.length > mostLetters

/** Listens to a control: what is typed is written at once, and shown as understood when it is left. */
function follow(
  sitting: Sitting,
  asked: Put,
  control: Control,
  refresh: (refused?: string) => void,
  say: (words: string) => void,
): void {
  const step = asked.at.join('.')
  const write = (typed: string): void => {
    const { value } = understood(sitting, asked, typed)
    const isTaken =
      asked.write?.(value) ??
      sitting.answer(answerChanges(sitting.draft().data, asked.at, value), step)
    refresh(isTaken ? undefined : sitting.said.form.says.frame.refused)
  }
  for (const input of control.inputs) {
    input.addEventListener('input', () => {
      say('')
      write(control.read())
    })
    input.addEventListener('change', () => {
      const typed = control.read()
      const found = understood(sitting, asked, typed)
      if (!control.isGroup && found.typed !== control.read()) control.show(found.typed)
      write(control.read())
      if (found.shown !== undefined && control.read() !== typed) say(found.shown)
      if (found.isNotKnown && asked.unknown) {
        // The field is left first, since the page is made anew; both are one step back.
        const { unknown } = asked
        setTimeout(() => unknown(asked.step ?? step))
        return
      }
      if (found.isNotKnown) say(sitting.said.form.says.field.takenOut)
      sitting.settle()
    })
  }
}

/** A question with its control, and all that is said of it. */
export function fieldOf(sitting: Sitting, asked: Put): Part {
  const { question, at } = asked
  const typed = shownAt(sitting, asked)
  const control = controlOf(question, typed, sitting)
  control.show(typed)
  const lines = linesOf()
  const label = asked.label ?? aboutQuestion(question, sitting.locale().system).label
  const how = howSaid(sitting, asked)
  const caption = control.isGroup ? element('legend', label) : element('label', label)
  if (asked.isAsked) caption.className = 'asked-above'
  if (caption instanceof HTMLLabelElement) caption.htmlFor = control.inputs[0]?.id ?? ''
  // What was made of an answer when it was left is said until something else is typed.
  let told = ''
  const refresh = (refused?: string): void =>
    refreshed(sitting, asked, control, lines, { refused, told })
  const node = classed(
    control.isGroup ? 'fieldset' : 'div',
    `field ${question.kind}`,
    caption,
    classed('div', 'answer', control.node, ...beside(sitting, asked, control)),
    lines.shown,
    lines.fault,
    lines.measured,
    lines.until,
  )
  if (how !== '') node.append(classed('p', 'how', how))
  node.dataset['at'] = at.join('.')
  if (isLong(aboutQuestion(question, sitting.locale().system).example)) node.classList.add('wide')
  follow(sitting, asked, control, refresh, (words) => {
    told = words
    refresh()
  })
  const box = measureBox(sitting, question, at)
  if (box) node.append(box.node)
  refresh()
  return {
    node,
    refresh: () => {
      refresh()
      box?.refresh()
    },
  }
}
