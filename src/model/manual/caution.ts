import type { Text } from './text.ts'

export type ManualCaution = {
  readonly id: string
  readonly signal: 'danger' | 'warning' | 'caution' | 'notice'
  readonly hazard: Text
  readonly avoid: Text
  /** For the chapter of hazards alone. */
  readonly more: Text | undefined
  /** Somebody drives or runs a machine wherever this can happen. */
  readonly machine: boolean
  readonly sources: readonly string[]
}

const rank = ['danger', 'warning', 'caution', 'notice']

/** The worst first. */
export const bySignal = (a: ManualCaution, b: ManualCaution): number =>
  rank.indexOf(a.signal) - rank.indexOf(b.signal)

/** The caution with the worst signal word. */
export const worstOf = (cautions: readonly ManualCaution[]): ManualCaution | undefined =>
  [...cautions].sort(bySignal)[0]
