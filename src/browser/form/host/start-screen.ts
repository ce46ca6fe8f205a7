import type { Words } from '../../../validate/schemas/words.ts'
import { button, classed, element } from '../../element.ts'

/** Something that can be chosen on the first screen. */
export type Offer<Chosen> = {
  readonly title: string
  readonly about: string
  /** Undefined where the choice could not be carried out; why has been told. */
  readonly take: () => Promise<Chosen | undefined>
}

/** Offers with a heading of their own. */
export type Offers<Chosen> = { readonly title?: string; readonly list: readonly Offer<Chosen>[] }

/** Shows the first screen until something is chosen. */
export function startScreen<Chosen>(
  root: HTMLElement,
  words: Words,
  groups: readonly Offers<Chosen>[],
  ...below: readonly HTMLElement[]
): Promise<Chosen> {
  return new Promise((resolve) => {
    const shown = ({ title: name, about, take }: Offer<Chosen>): HTMLElement => {
      const choice = button(name, async () => {
        const chosen = await take()
        if (chosen === undefined) return
        root.replaceChildren()
        resolve(chosen)
      })
      return element('li', choice, classed('p', 'soft', about))
    }
    const lists = groups
      .filter(({ list }) => list.length > 0)
      .flatMap(({ title: heading, list }) => [
        ...(heading === undefined ? [] : [element('h2', heading)]),
        classed('ul', 'offers', ...list.map(shown)),
      ])
    const text = classed('p', 'lead', words.maker.lead)
    root.replaceChildren(
      classed('main', 'start', element('h1', words.maker.title), text, ...lists, ...below),
    )
  })
}
