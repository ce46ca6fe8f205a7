import type { ManualCaution } from './caution.ts'
import type { Contact } from './emergency.ts'
import type { ManualReckoner } from './reckoner.ts'
import type { Text } from './text.ts'

/**
 * A card for one person's pocket: a few large numbers, at most one table, what is dangerous, whom
 * to call.
 */
export type ManualCard = {
  readonly id: string
  readonly title: Text
  /** Whose pocket it is for. */
  readonly for: Text
  /** Names in `Manual.quantities`, all with a value, with the words that stand under them. */
  readonly figures: readonly { readonly name: string; readonly label: Text }[]
  readonly reckoner: ManualReckoner | undefined
  readonly cautions: readonly ManualCaution[]
  readonly phones: readonly Contact[]
}
