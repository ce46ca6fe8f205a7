import type { OpenPage } from '../page/open-page.ts'

/** Pages that stay open and are used again and again, each for one thing at a time. */
export type Lanes = {
  /**
   * Waits until one of the pages is free.
   * @param isNext Whether it goes before what is already waiting.
   */
  readonly use: <T>(work: (lane: OpenPage) => Promise<T>, isNext: boolean) => Promise<T>
  /** Waits until all of them are open, or cannot be opened. */
  readonly opened: () => Promise<void>
  readonly close: () => Promise<void>
}

/** All pages are opened now, so that they are there when the first work has been made ready. */
export function openLanes(most: number, open: () => Promise<OpenPage>): Lanes {
  const waiting: (() => Promise<void>)[] = []
  const opened = Array.from({ length: most }, open)
  // A page that could not be opened says so to whoever wants to use it.
  for (const opening of opened) opening.catch(() => undefined)
  const idle = [...opened]
  let busy = 0

  const next = (): void => {
    while (busy < most && waiting.length > 0) {
      busy++
      void waiting
        .shift()?.()
        .finally(() => {
          busy--
          next()
        })
    }
  }
  const withLane = async <T>(work: (lane: OpenPage) => Promise<T>): Promise<T> => {
    const opening = idle.pop()
    if (!opening) throw new Error('more work at once than pages')
    try {
      return await work(await opening)
    } finally {
      idle.push(opening)
    }
  }
  return {
    use: (work, isNext) =>
      new Promise((resolve, reject) => {
        const begin = (): Promise<void> => withLane(work).then(resolve, reject)
        if (isNext) waiting.unshift(begin)
        else waiting.push(begin)
        next()
      }),
    opened: async () => void (await Promise.allSettled(opened)),
    close: async () => {
      const lanes = await Promise.allSettled(opened)
      await Promise.all(lanes.map((l) => (l.status === 'fulfilled' ? l.value.close() : undefined)))
    },
  }
}
