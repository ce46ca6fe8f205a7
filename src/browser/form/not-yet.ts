/** Questions that somebody has answered with "nobody knows yet", kept in the browser. */
export type NotYet = {
  readonly has: (question: string) => boolean
  readonly put: (question: string, isNotYet: boolean) => void
}

function read(key: string): readonly string[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? '[]')
    return Array.isArray(kept) ? kept.map(String) : []
  } catch {
    // A browser that keeps nothing, or something else under this name: nothing was said yet.
    return []
  }
}

/** @param name Of the file, so that two fairs do not answer for each other. */
export function notYetIn(name: string): NotYet {
  const key = `ovalkeep-not-yet-${name}`
  const known = new Set(read(key))
  return {
    has: (question) => known.has(question),
    put: (question, isNotYet) => {
      if (isNotYet) known.add(question)
      else known.delete(question)
      try {
        localStorage.setItem(key, JSON.stringify([...known]))
      } catch {
        // It holds as long as the page is open.
      }
    },
  }
}
