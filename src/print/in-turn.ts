import type { Steps } from '../model/steps.ts'

/** Lets whatever else is waiting have its turn. */
export const giveWay = (): Promise<void> => new Promise((go) => setImmediate(go))

/** Does work in steps, and whatever else is waiting between them. */
export async function stepByStep<T>(steps: Steps<T>): Promise<T> {
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
    await giveWay()
  }
}

/**
 * Begins pieces of work one after another, each when whatever else is waiting has had its turn, and
 * waits for all of them.
 */
export async function inTurn<T, R>(
  items: readonly T[],
  begin: (item: T, i: number) => Promise<R>,
): Promise<readonly R[]> {
  const begun: Promise<R>[] = []
  for (const [i, item] of items.entries()) {
    await giveWay()
    const work = begin(item, i)
    // Whoever waits for all of them is told of a failure, even while others are still begun.
    work.catch(() => undefined)
    begun.push(work)
  }
  return Promise.all(begun)
}
