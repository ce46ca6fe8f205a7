import { type Kept, parseKept } from './kept.ts'

/** What of the browser's own store is used. */
export type Shelf = {
  readonly getItem: (name: string) => string | null
  readonly setItem: (name: string, text: string) => void
  readonly removeItem: (name: string) => void
}

/** The records of a facility on this phone, and what they were before the last change. */
export type RecordStore = {
  readonly now: () => Kept
  /** @returns whether the browser keeps it. */
  readonly change: (kept: Kept) => boolean
  /** Takes back the last change. @returns whether there was one. */
  readonly back: () => boolean
  readonly canGoBack: () => boolean
  /** Reads again what another window of this browser has written. */
  readonly refresh: () => void
  readonly keeps: boolean
  /** Under which name the browser keeps them. */
  readonly name: string
}

/** Whether a browser keeps anything: in private windows, or when it is full, it does not. */
function works(shelf: Shelf | undefined): shelf is Shelf {
  try {
    shelf?.setItem('ovalkeep.trial', '1')
    shelf?.removeItem('ovalkeep.trial')
    return shelf !== undefined
  } catch {
    return false
  }
}

/** @param shelf Undefined where the browser allows none; records then last as long as the page. */
export function recordStore(facility: string, shelf: Shelf | undefined): RecordStore {
  const [name, before] = [`ovalkeep.records.${facility}`, `ovalkeep.records.${facility}.before`]
  const keeps = works(shelf)
  const memory = new Map<string, string>()
  const get = (key: string): string | null =>
    memory.get(key) ?? (keeps ? (shelf?.getItem(key) ?? null) : null)
  const put = (key: string, text: string): boolean => {
    try {
      if (!keeps) throw new Error('kept nowhere')
      shelf?.setItem(key, text)
      memory.delete(key)
      return true
    } catch {
      // Full, or nothing is kept at all: the page goes on with what it has, and says so.
      memory.set(key, text)
      return false
    }
  }
  const forget = (key: string): void => {
    memory.delete(key)
    if (keeps) shelf?.removeItem(key)
  }
  let now = parseKept(get(name))
  return {
    now: () => now,
    change: (kept) => {
      const old = JSON.stringify(now)
      now = kept
      // The older copy goes first, so that there is room for the new one.
      forget(before)
      const isKept = put(name, JSON.stringify(kept))
      put(before, old)
      return isKept
    },
    back: () => {
      const old = get(before)
      if (old === null) return false
      now = parseKept(old)
      put(name, old)
      forget(before)
      return true
    },
    canGoBack: () => get(before) !== null,
    refresh: () => {
      now = parseKept(get(name))
    },
    keeps,
    name,
  }
}
