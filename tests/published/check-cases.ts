import { afterAll, describe, expect, it } from 'vitest'
import { calculationsOf, declaredWorksheets } from '../../src/compute/uses/declared-worksheets.ts'
import { factSpec } from '../../src/model/fact-spec.ts'
import { type Case, compare, inputsOf, type Runner, titleOf } from './case.ts'

const shown: ReadonlySet<string> = new Set([...calculationsOf(declaredWorksheets).keys()])

/** Whether a manual or `explain` can show what a case checks. */
export const isReached = ({ checks }: Case): boolean =>
  checks.startsWith('fact ')
    ? factSpec(checks.slice('fact '.length)) !== undefined
    : shown.has(checks)

/** Prints how many checks there are for each subject and kind of source. */
function printCounts(cases: readonly Case[]): void {
  const counted = cases.filter((c) => isReached(c) && c.authority !== 'memory')
  const rows = [...new Set(counted.map((c) => c.topic))].map((topic) => {
    const of = counted.filter((c) => c.topic === topic)
    const from = (authority: Case['authority']): number =>
      of.filter((c) => c.authority === authority).length
    return {
      topic,
      public: from('public'),
      book: from('book'),
      arithmetic: from('arithmetic'),
      all: of.length,
    }
  })
  console.table(rows)
  const rest = cases.length - counted.length
  if (rest > 0)
    console.log(`${rest} more are run and not counted: from memory, or of what no manual shows.`)
}

/** Runs every case of a file, and prints how many count. */
export function checkCases(
  cases: readonly Case[],
  runners: Readonly<Record<string, Runner>>,
): void {
  describe.each([...new Set(cases.map((c) => c.topic))])('published checks, %s', (topic) => {
    it.each(cases.filter((c) => c.topic === topic).map((c) => [titleOf(c), c] as const))(
      '%s',
      (_title, c) => {
        const run = runners[c.fn]
        if (!run) throw new Error(`nothing here works out ${c.fn}`)
        compare(c, run(inputsOf(c)))
      },
    )
  })

  it('works out no formula that no case asks for', () => {
    const asked = new Set(cases.map((c) => c.fn))
    expect(Object.keys(runners).filter((name) => !asked.has(name))).toEqual([])
  })

  afterAll(() => printCounts(cases))
}
