/** The parts of the page that lessons are taken in. */
export type Room = {
  readonly study: HTMLElement
  readonly where: HTMLElement
  readonly title: HTMLElement
  readonly stage: HTMLElement
  readonly form: HTMLFormElement
  readonly submit: HTMLButtonElement
  readonly verdict: HTMLElement
  readonly result: HTMLElement
  readonly next: HTMLButtonElement
  readonly leave: HTMLButtonElement
}

/** Finds them; undefined where the page has none. */
export function findRoom(): Room | undefined {
  const study = document.querySelector<HTMLElement>('.study')
  const one = <E extends HTMLElement = HTMLElement>(name: string) => study?.querySelector<E>(name)
  const [where, title, stage, verdict, result] = [
    '.where',
    'h2',
    '.stage',
    '.verdict',
    '.result',
  ].map((name) => one(name))
  const form = one<HTMLFormElement>('form')
  const submit = one<HTMLButtonElement>('[type="submit"]')
  const next = one<HTMLButtonElement>('.next')
  const leave = one<HTMLButtonElement>('.leave')
  return study && where && title && stage && verdict && result && form && submit && next && leave
    ? { study, where, title, stage, form, submit, verdict, result, next, leave }
    : undefined
}

/** Words of the page with a value in each of their places. */
export const put = (
  pattern: string | undefined,
  values: Readonly<Record<string, string | number>>,
): string => (pattern ?? '').replace(/\{(\w+)\}/g, (_, name: string) => String(values[name] ?? ''))

/** Things stand on the stage for a while, and go back to their places afterward. */
export function onStage(stage: HTMLElement): (things: readonly Element[]) => void {
  let shown: readonly { readonly thing: Element; readonly place: Comment }[] = []
  return (things) => {
    // The last one that was taken may have stood in the first.
    for (const { thing, place } of shown.toReversed()) place.replaceWith(thing)
    shown = things.map((thing) => {
      const place = document.createComment('')
      thing.replaceWith(place)
      return { thing, place }
    })
    stage.replaceChildren(...things)
  }
}
