import type { OpenPage } from '../page/open-page.ts'

/** Pages that stay open and are used again and again, each for one thing at a time. */
export type Lanes = {
  /**
   * Waits until one of the pages is free.
   * @param isNext Whether it goes before what is already waiting.
   */
  readonly use: <T>(work: (lane: OpenPage) => Promise<T>, isNext: boolean) => Promise<T>
  readonly close: () => Promise<void>
}

/** Each page is opened when it is first needed. */
export function openLanes(most: number, open: () => Promise<OpenPage>): Lanes {
  const waiting: (() => Promise<void>)[] = []
  const opened: Promise<OpenPage>[] = []
  const idle: OpenPage[] = []
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
  const oneMore = (): Promise<OpenPage> => {
    const opening = open()
    opened.push(opening)
    return opening
  }
  const withLane = async <T>(work: (lane: OpenPage) => Promise<T>): Promise<T> => {
    const lane = idle.pop() ?? (await oneMore())
    try {
      return await work(lane)
    } finally {
      idle.push(lane)
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
    close: async () => {
      // A page that could not be opened has said so to whoever wanted to use it.
      const lanes = await Promise.allSettled(opened)
      await Promise.all(lanes.map((l) => (l.status === 'fulfilled' ? l.value.close() : undefined)))
    },
  }
}
