import type { Built } from '../build-summary.ts'
import { type ExitCode, exit } from '../io.ts'

/** What came of one facility of a list. */
export type Outcome = {
  readonly id: string
  readonly code: ExitCode
  /** Undefined where nothing was written. */
  readonly built: Pick<Built, 'counts' | 'printed'> | undefined
  readonly seconds: number
}

/** From the best to the worst that can come of a facility. */
const order: readonly ExitCode[] = [
  exit.fine,
  exit.noPdfs,
  exit.faults,
  exit.usage,
  exit.unwritable,
  exit.bug,
]

/** The worst of several exit codes. */
export const worst = (codes: readonly ExitCode[]): ExitCode =>
  codes.reduce<ExitCode>((a, b) => (order.indexOf(b) > order.indexOf(a) ? b : a), exit.fine)

const why: Partial<Record<ExitCode, string>> = {
  [exit.faults]: 'not made: its files have errors',
  [exit.noPdfs]: 'not made: no PDFs',
  [exit.unwritable]: 'not made: cannot be written',
  [exit.bug]: 'not made: a fault of the program',
}

const head = ['facility', 'site pages', 'binder pages', 'findings', 'seconds'] as const

function cells({ id, built, code, seconds }: Outcome): readonly string[] {
  if (!built) return [id, why[code] ?? 'not made']
  const { counts, printed } = built
  return [
    id,
    String(counts.pages),
    printed ? String(printed.binderPages) : 'no PDFs',
    String(counts.findings),
    seconds.toFixed(1),
  ]
}

/** What came of each facility of a list, a line each, and of all together. */
export function table(outcomes: readonly Outcome[], seconds: number): string {
  const rows = [head, ...outcomes.map(cells)]
  const widths = head.map((_, column) =>
    // What is said instead of numbers runs over their columns.
    Math.max(
      ...rows.filter((r) => column === 0 || r.length > 2).map((r) => r[column]?.length ?? 0),
    ),
  )
  const lines = rows.map((row) => {
    const [first = '', ...rest] = row
    const name = first.padEnd(widths[0] ?? 0)
    if (rest.length < 2) return `${name}  ${rest.join('')}`
    return `${name}  ${rest.map((text, i) => text.padStart(widths[i + 1] ?? 0)).join('  ')}`
  })
  const made = outcomes.filter((o) => o.built).length
  const not = outcomes.length - made
  return [
    ...lines,
    `${made} of ${outcomes.length} made${not > 0 ? `, ${not} not: why stands above` : ''}; ${seconds.toFixed(1)} s`,
  ].join('\n')
}
