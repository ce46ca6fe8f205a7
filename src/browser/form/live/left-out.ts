import { worded } from '../../../edit/form/understood.ts'
import { fill } from '../../../model/pattern.ts'
import type { Problem } from '../../../model/problem.ts'
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

/** Why an answer was left out, without keys of the file where that can be. */
const whyOf = ({ code, path = [], message }: Problem, words: Shown['library']['words']): string =>
  code === 'schema/missing'
    ? fill(words.live.lacking, { what: entryLabel(path.join('.')) })
    : worded(message)

/** What is left out, with the reason, and what stands in for what nobody has said; each once. */
export function putAside({ leftOut, standIns, problems, library: { words } }: Shown): {
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
        number === undefined ? what : fill(words.live.nth, { what, number: Number(number) + 1 }),
      why: said ? whyOf(said, words) : '',
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
