import type { Text } from './text.ts'

export type ManualCaution = {
  readonly id: string
  readonly signal: 'danger' | 'warning' | 'caution' | 'notice'
  readonly hazard: Text
  readonly avoid: Text
  readonly sources: readonly string[]
}

const rank = ['danger', 'warning', 'caution', 'notice']

/** The worst first. */
export const bySignal = (a: ManualCaution, b: ManualCaution): number =>
  rank.indexOf(a.signal) - rank.indexOf(b.signal)
