const canFocus = 'input, select, textarea, button, summary, a[href]'

/** Where the keyboard is, so that it can be put there again in a page that was made anew. */
export type Spot = { readonly at: string; readonly index: number } | undefined

const placeOf = (node: Element): HTMLElement | null => node.closest('[data-at], [data-first]')
const nameOf = ({ dataset }: HTMLElement): string => dataset['at'] ?? `first ${dataset['first']}`

export function spotIn(main: HTMLElement): Spot {
  const here = document.activeElement
  const place = here && main.contains(here) ? placeOf(here) : null
  if (!place || !here) return undefined
  return { at: nameOf(place), index: [...place.querySelectorAll(canFocus)].indexOf(here) }
}

/** Puts the keyboard back; nowhere where the place is gone. */
export function returnTo(main: HTMLElement, spot: Spot): boolean {
  if (!spot) return false
  const place = [...main.querySelectorAll<HTMLElement>('[data-at], [data-first]')].find(
    (node) => nameOf(node) === spot.at,
  )
  const all = [...(place?.querySelectorAll<HTMLElement>(canFocus) ?? [])]
  const found = all[Math.min(spot.index, all.length - 1)]
  found?.focus({ preventScroll: true })
  return found !== undefined
}

/** Brings the question at a path into view, opened, with the keyboard in it. */
export function showPlace(main: HTMLElement, at: string): boolean {
  const places = [...main.querySelectorAll<HTMLElement>('[data-at], [data-first]')]
  const steps = at.split('.')
  const wanted = steps.map((_step, i) => steps.slice(0, steps.length - i).join('.'))
  const place = wanted
    .map((name) => places.find((node) => nameOf(node) === name))
    .find((node) => node !== undefined)
  if (!place) return false
  for (
    let fold = place.closest('details');
    fold;
    fold = fold.parentElement?.closest('details') ?? null
  )
    fold.open = true
  place.scrollIntoView({ block: 'center' })
  place.querySelector<HTMLElement>(canFocus)?.focus({ preventScroll: true })
  return true
}
