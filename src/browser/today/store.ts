/** A browser may have no store, or forbid it: from a folder some do. */
export function readStore(key: string): string | null {
  try {
    return localStorage.getItem(key)
  } catch {
    return null
  }
}

/** @returns whether it is kept. */
export function writeStore(key: string, text: string | undefined): boolean {
  try {
    if (text === undefined) localStorage.removeItem(key)
    else localStorage.setItem(key, text)
    return true
  } catch {
    return false
  }
}
