import { parseDocument } from 'yaml'
import type { Path } from '../../read/read-yaml.ts'
import { moved } from '../move.ts'
import { type Change, type Spliced, splice } from '../splice.ts'
import { valueAt } from './data.ts'

/** A facility file while somebody answers: its text, and the texts before each answer. */
export type Draft = {
  readonly text: string
  /** What the text says; undefined where it is no YAML, and nothing can be answered. */
  readonly data: unknown
  readonly steps: readonly Step[]
}

type Step = {
  readonly text: string
  /** What was answered: typing on in one field is one step. */
  readonly at: string
}

const options = { prettyErrors: false, strict: true, uniqueKeys: true, merge: false } as const

function dataOf(text: string): unknown {
  const doc = parseDocument(text, options)
  return doc.errors.length > 0 ? undefined : ((doc.toJS() as unknown) ?? {})
}

/** The draft of a file as it was opened. */
export const draftOf = (text: string): Draft => ({ text, data: dataOf(text), steps: [] })

/** The draft with an answer; or why the file cannot take it, in which case nothing has changed. */
export type Answered =
  | { readonly ok: true; readonly draft: Draft }
  | { readonly ok: false; readonly why: string }

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

/** Most steps that can be taken back. */
const mostSteps = 200

function withText(draft: Draft, text: string, at: string): Draft {
  if (text === draft.text) return draft
  const goesOn = at !== '' && draft.steps.at(-1)?.at === at
  const steps = goesOn ? draft.steps : [...draft.steps, { text: draft.text, at }].slice(-mostSteps)
  return { text, data: dataOf(text), steps }
}

/** The text with one change; as it is where the file says that already. */
function changed(text: string, data: unknown, { path, value }: Change): Spliced {
  const there = valueAt(data, path)
  if (value === undefined ? there === undefined : same(there, value)) return { ok: true, text }
  return splice(text, { path, value })
}

/**
 * A draft with changes that are one answer.
 * @param at What was answered; empty where it is a step by itself.
 */
export function answered(draft: Draft, changes: readonly Change[], at: string): Answered {
  let { text, data } = draft
  for (const change of changes) {
    const made = changed(text, data, change)
    if (!made.ok) return made
    if (made.text === text) continue
    text = made.text
    data = dataOf(text)
  }
  return { ok: true, draft: withText(draft, text, at) }
}

/** A draft with an entry of a list one place further up or down. */
export function reordered(draft: Draft, list: Path, from: number, to: number): Answered {
  const made = moved(draft.text, list, from, to)
  return made.ok ? { ok: true, draft: withText(draft, made.text, '') } : made
}

/** The draft before its last step. */
export function steppedBack(draft: Draft): Draft {
  const last = draft.steps.at(-1)
  return last
    ? { text: last.text, data: dataOf(last.text), steps: draft.steps.slice(0, -1) }
    : draft
}

/** The draft when a field is left: what is typed there next is a step of its own. */
export const settled = (draft: Draft): Draft => ({
  ...draft,
  steps: draft.steps.map((step) => ({ ...step, at: '' })),
})
