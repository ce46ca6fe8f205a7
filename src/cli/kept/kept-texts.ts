import { type Remembered, recall, remembered } from '../../model/remembered.ts'
import { type KeptResults, keptResults } from './kept-results.ts'

const kind = 'texts'

/** Lets the stages take what they have made of the same texts before. */
export function recallTexts(results: KeptResults): void {
  recall(() => results.find(kind, [])?.value as Remembered | undefined)
}

/**
 * Keeps what the stages have made of texts, where that is more than was kept. All of it is written, so a
 * process does so when it ends, however many facilities it has made.
 */
export function keepTexts(): void {
  const { all, isNew } = remembered()
  if (isNew) keptResults()?.keep(kind, [], all)
}
