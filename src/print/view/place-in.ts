/**
 * An element of the document.
 * @throws Error when there is none of that id.
 */
export function placeIn(id: string): PageElement {
  const found = document.getElementById(id)
  if (!found) throw new Error(`the page has no ${id}`)
  return found
}

/** Lets the browser show what has changed, and the reader do something, before work goes on. */
export const breathe = (): Promise<void> => new Promise((go) => setTimeout(go, 0))
