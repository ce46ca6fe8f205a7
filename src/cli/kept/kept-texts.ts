import { type Remembered, recall, remembered } from '../../render/text/remembered.ts'
import type { KeptResults } from './kept-results.ts'

const kind = 'texts'

/** Lets rendering take what it has made of the same texts before. */
export function recallTexts(results: KeptResults): void {
  recall(() => results.find(kind, [])?.value as Remembered | undefined)
}

/** Keeps what rendering has made of texts, where that is more than was kept. */
export function keepTexts(results: KeptResults | undefined): void {
  const { all, isNew } = remembered()
  if (isNew) results?.keep(kind, [], all)
}
