import { type Remembered, recall, remembered } from '../../model/remembered.ts'
import type { KeptResults } from './kept-results.ts'

const kind = 'texts'

/** Lets the stages take what they have made of the same texts before. */
export function recallTexts(results: KeptResults): void {
  recall(() => results.find(kind, [])?.value as Remembered | undefined)
}

/** Keeps what the stages have made of texts, where that is more than was kept. */
export function keepTexts(results: KeptResults | undefined): void {
  const { all, isNew } = remembered()
  if (isNew) results?.keep(kind, [], all)
}
