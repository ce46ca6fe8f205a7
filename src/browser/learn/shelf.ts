/** The browser's store for how far somebody has come; where there is none, nothing is kept. */
export const shelf = {
  get: (key: string): string | null => {
    try {
      return localStorage.getItem(key)
    } catch {
      return null
    }
  },
  set: (key: string, text: string | undefined): void => {
    try {
      if (text === undefined) localStorage.removeItem(key)
      else localStorage.setItem(key, text)
    } catch {
      // A browser that keeps nothing begins anew; nothing else is lost.
    }
  },
}
