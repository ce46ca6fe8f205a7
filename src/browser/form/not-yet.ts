type Kept = Readonly<Record<string, unknown>>

/** Questions that somebody has answered with "nobody knows yet", kept in the browser. */
export type NotYet = {
  readonly has: (question: string) => boolean
  readonly put: (question: string, isNotYet: boolean) => void
  /** What was typed of an answer that cannot stand in the file without the rest. */
  readonly kept: (question: string) => Kept
  readonly keep: (question: string, typed: Kept) => void
}

function read(key: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(key) ?? 'null') as unknown
  } catch {
    // A browser that keeps nothing, or something else under this name: nothing was said yet.
    return null
  }
}

function write(key: string, value: unknown): void {
  try {
    localStorage.setItem(key, JSON.stringify(value))
  } catch {
    // It holds as long as the page is open.
  }
}

const isGroup = (found: unknown): found is Kept =>
  typeof found === 'object' && found !== null && !Array.isArray(found)

/** @param name Of the file, so that two fairs do not answer for each other. */
export function notYetIn(name: string): NotYet {
  const key = `ovalkeep-not-yet-${name}`
  const keptKey = `ovalkeep-kept-${name}`
  const [listed, typed] = [read(key), read(keptKey)]
  const known = new Set(Array.isArray(listed) ? listed.map(String) : [])
  const kept = new Map<string, unknown>(isGroup(typed) ? Object.entries(typed) : [])
  return {
    has: (question) => known.has(question),
    put: (question, isNotYet) => {
      if (isNotYet) known.add(question)
      else known.delete(question)
      write(key, [...known])
    },
    kept: (question) => {
      const found = kept.get(question)
      return isGroup(found) ? found : {}
    },
    keep: (question, answer) => {
      kept.set(question, answer)
      write(keptKey, Object.fromEntries(kept))
    },
  }
}
