import { parseDocument } from 'yaml'
import type { Path } from '../../read/read-yaml.ts'
import { moved } from '../move.ts'
import { type Change, type Spliced, splice } from '../splice.ts'
import { valueAt } from './data.ts'

/** Tables beside a facility file, by the names of their files. */
export type Tables = ReadonlyMap<string, string>

/** A facility file while somebody answers: its text, and the texts before each answer. */
export type Draft = {
  readonly text: string
  /** What the text says; undefined where it is no YAML, and nothing can be answered. */
  readonly data: unknown
  /** Tables that can be typed in. */
  readonly tables: Tables
  readonly steps: readonly Step[]
  /** Steps that were taken back and can be made again, the next one last. */
  readonly ahead: readonly Step[]
}

type Step = {
  readonly text: string
  readonly tables: Tables
  /** What was answered: typing on in one field is one step. */
  readonly at: string
}

const options = { prettyErrors: false, strict: true, uniqueKeys: true, merge: false } as const

function dataOf(text: string): unknown {
  const doc = parseDocument(text, options)
  return doc.errors.length > 0 ? undefined : ((doc.toJS() as unknown) ?? {})
}

/** The draft of a file as it was opened. */
export const draftOf = (text: string, tables: Tables = new Map()): Draft => ({
  text,
  data: dataOf(text),
  tables,
  steps: [],
  ahead: [],
})

/** The draft with an answer; or why the file cannot take it, in which case nothing has changed. */
export type Answered =
  | { readonly ok: true; readonly draft: Draft }
  | { readonly ok: false; readonly why: string }

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

/** Most steps that can be taken back. */
const mostSteps = 200

const sameTables = (a: Tables, b: Tables): boolean =>
  a === b || (a.size === b.size && [...a].every(([name, text]) => b.get(name) === text))

function withTexts(draft: Draft, text: string, tables: Tables, at: string): Draft {
  if (text === draft.text && sameTables(tables, draft.tables)) return draft
  const goesOn = at !== '' && draft.steps.at(-1)?.at === at
  const before = { text: draft.text, tables: draft.tables, at }
  const steps = goesOn ? draft.steps : [...draft.steps, before].slice(-mostSteps)
  const data = text === draft.text ? draft.data : dataOf(text)
  return { text, data, tables, steps, ahead: [] }
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
  return { ok: true, draft: withTexts(draft, text, draft.tables, at) }
}

/**
 * A draft with a table that says something else, and with what the file says of it.
 * @param at What was answered; empty where it is a step by itself.
 */
export function withTable(
  draft: Draft,
  { name, text }: { readonly name: string; readonly text: string },
  changes: readonly Change[],
  at: string,
): Answered {
  const made = answered(draft, changes, at)
  if (!made.ok) return made
  const tables = new Map([...draft.tables, [name, text]])
  return { ok: true, draft: withTexts(draft, made.draft.text, tables, at) }
}

/** A draft with an entry of a list one place further up or down. */
export function reordered(draft: Draft, list: Path, from: number, to: number): Answered {
  const made = moved(draft.text, list, from, to)
  return made.ok ? { ok: true, draft: withTexts(draft, made.text, draft.tables, '') } : made
}

/** The draft as another step has it, with the way from there to where it is now. */
const gone = (
  draft: Draft,
  { text, tables }: Step,
  ways: Pick<Draft, 'steps' | 'ahead'>,
): Draft => ({
  text,
  data: text === draft.text ? draft.data : dataOf(text),
  tables,
  ...ways,
})

/** What is now, as a step to come back to. */
const here = ({ text, tables }: Draft): Step => ({ text, tables, at: '' })

/** The draft before its last step. */
export function steppedBack(draft: Draft): Draft {
  const last = draft.steps.at(-1)
  if (!last) return draft
  return gone(draft, last, {
    steps: draft.steps.slice(0, -1),
    ahead: [...draft.ahead, here(draft)],
  })
}

/** The draft before it was stepped back, as long as nothing else was answered. */
export function steppedForward(draft: Draft): Draft {
  const next = draft.ahead.at(-1)
  if (!next) return draft
  return gone(draft, next, {
    steps: [...draft.steps, here(draft)],
    ahead: draft.ahead.slice(0, -1),
  })
}

/** The draft when a field is left: what is typed there next is a step of its own. */
export const settled = (draft: Draft): Draft => ({
  ...draft,
  steps: draft.steps.map((step) => ({ ...step, at: '' })),
})
