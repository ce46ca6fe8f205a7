import { fill } from '../../../model/pattern.ts'
import type { Problem } from '../../../model/problem.ts'
import { problemOf } from '../problem-at.ts'
import { entryLabel } from './entry-of.ts'
import type { Shown } from './worked.ts'

/** An answer that was left out, or that something stands in for. */
export type Put = {
  readonly entry: string
  /** What it is called; of a list, with its number in it. */
  readonly label: string
  /** Why it was left out, as far as something was said of it. */
  readonly why: string
}

/** What a form fills in with another answer, and so never asks for. */
const followsByItself: readonly string[] = ['id', 'paper']

const isWithin = (entry: string, outer: string): boolean =>
  entry === outer || entry.startsWith(`${outer}.`)

/** Why an answer was left out, in the words that stand at its field. */
function whyOf(problem: Problem, { form: [form] }: Shown['library']): string {
  const what = entryLabel((problem.path ?? []).join('.'))
  return form ? problemOf(problem, what, form.value.says) : ''
}

/** What is left out, with the reason, and what stands in for what nobody has said; each once. */
export function putAside({ leftOut, standIns, problems, library }: Shown): {
  readonly out: readonly Put[]
  readonly unsaid: readonly Put[]
} {
  const put = (entry: string): Put => {
    const number = entry.split('.').findLast((step) => /^\d+$/.test(step))
    const what = entryLabel(entry)
    const said = problems.find(
      ({ path, severity }) => severity === 'error' && path && isWithin(path.join('.'), entry),
    )
    return {
      entry,
      label:
        number === undefined
          ? what
          : fill(library.words.live.nth, { what, number: Number(number) + 1 }),
      why: said ? whyOf(said, library) : '',
    }
  }
  return {
    out: leftOut.map(put),
    unsaid: standIns
      .filter((entry) => !followsByItself.includes(entry))
      .filter((entry) => !leftOut.some((left) => isWithin(entry, left)))
      .map(put),
  }
}
