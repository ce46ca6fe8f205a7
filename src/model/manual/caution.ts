import type { Text } from './text.ts'

export type ManualCaution = {
  readonly id: string
  readonly signal: 'danger' | 'warning' | 'caution' | 'notice'
  readonly hazard: Text
  readonly avoid: Text
  readonly sources: readonly string[]
}
