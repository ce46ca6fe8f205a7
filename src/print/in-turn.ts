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
    await new Promise((go) => setImmediate(go))
    const work = begin(item, i)
    // Whoever waits for all of them is told of a failure, even while others are still begun.
    work.catch(() => undefined)
    begun.push(work)
  }
  return Promise.all(begun)
}
