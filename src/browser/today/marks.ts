import { classed, element } from '../element.ts'
import type { Day } from './day.ts'
import { differs, inlineHtml, largeHtml, nowOf, printedOf, type Said } from './said.ts'

/** A place on the page where a number of the manual stands that a day may change. */
type Place = {
  readonly name: string
  readonly printed: HTMLElement
  /** What the day says, beside it; made when it is first wanted. */
  now: HTMLElement | undefined
}

const isLarge = (at: HTMLElement): boolean => at.classList.contains('big')

/** The sign that keeps a number of the day from being taken for one of the manual. */
const sign = (day: Day): HTMLElement => classed('b', 'day-sign', day.file.words.now)

/** The number of the day: large above the printed one, or behind it in running text. */
function makeNow(place: Place, day: Day): HTMLElement {
  const { printed } = place
  if (!isLarge(printed)) {
    const made = classed('span', 'day-now')
    printed.after(' ', made)
    return made
  }
  const made = classed(printed.tagName === 'P' ? 'p' : 'span', 'day-now big')
  printed.before(made)
  printed.prepend(classed('span', 'day-was', `${day.file.words.manual} `))
  return made
}

function show(place: Place, said: Said | undefined, isChanged: boolean, day: Day): void {
  const { printed } = place
  printed.classList.toggle('is-was', isChanged)
  if (!isChanged) {
    if (place.now) place.now.hidden = true
    return
  }
  place.now ??= makeNow(place, day)
  const value = element('span')
  value.innerHTML = isLarge(printed) ? largeHtml(said, day) : inlineHtml(said, day)
  place.now.replaceChildren(sign(day), ' ', value)
  place.now.hidden = false
}

/** What has changed on the page, by name: what the day says, and the manual. */
export type Change = {
  readonly name: string
  readonly now: Said | undefined
  readonly printed: Said | undefined
}

/**
 * Puts the numbers of the day beside those of the manual, wherever they differ.
 * @returns Tells what is changed on this page, after every change.
 */
export function markNumbers(root: ParentNode, day: Day): () => readonly Change[] {
  const places = [...root.querySelectorAll<HTMLElement>('[data-q]')].map(
    (printed): Place => ({ name: printed.dataset['q'] ?? '', printed, now: undefined }),
  )
  return () => {
    const changes = new Map<string, Change>()
    for (const place of places) {
      const { name } = place
      const [now, printed] = [nowOf(name, day), printedOf(name, day)]
      const isChanged = differs(now, printed)
      show(place, now, isChanged, day)
      if (isChanged) changes.set(name, { name, now, printed })
    }
    return [...changes.values()]
  }
}

/** The facts of the day that some number on the page rests on, in their order. */
export function factsBehind(root: ParentNode, day: Day): readonly string[] {
  const names = new Set(
    [...root.querySelectorAll<HTMLElement>('[data-q], [data-reckoner]')].flatMap((at) => {
      const { q, reckoner } = at.dataset
      return q ? [q] : figuresOf(reckoner ?? '')
    }),
  )
  const rests = new Set([...names].flatMap((name) => [name, ...day.printed.restsOn(name)]))
  return [...day.facts.keys()].filter((path) => rests.has(path))
}

function figuresOf(reckoner: string): readonly string[] {
  const { figure, figures = [] } = JSON.parse(reckoner) as {
    figure: string
    figures?: readonly { figure: string }[]
  }
  return [figure, ...figures.map((f) => f.figure)]
}
