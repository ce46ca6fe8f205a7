import { fill } from '../../../model/pattern.ts'
import type { Library } from '../../../validate/check-library.ts'
import { classed, element } from '../../element.ts'
import type { Worked } from '../contract.ts'
import { type Missing, missingOneByOne } from './missing.ts'
import {
  type GoTo,
  missingPart,
  notePart,
  type Part,
  type PartName,
  partNames,
  quickParts,
} from './parts.ts'
import { sheetFor } from './sheet.ts'
import type { Shown } from './worked.ts'

/** Which parts stand open at first on a screen of the form. */
const openOn: Readonly<Record<string, readonly PartName[]>> = {
  help: ['emergency'],
  people: ['emergency'],
  machines: ['machines', 'findings'],
  'race-days': ['figures', 'findings'],
  water: ['figures', 'findings'],
  prices: ['figures', 'findings'],
  measured: ['missing'],
  result: ['figures', 'findings', 'missing'],
}
const openElsewhere: readonly PartName[] = ['plan', 'figures']

const quick = partNames.filter((name) => name !== 'missing')

/** What each part is called. */
const headings = (words: Library['words']): Readonly<Record<PartName, string>> => ({
  plan: words.live.plan,
  figures: words.live.figures,
  emergency: words.live.emergency,
  findings: words.live.findings,
  machines: words.live.machines,
  missing: words.live.missing,
})

/** What takes long is worked out for so many milliseconds, then whoever types comes first. */
const slice = 8

/** Nothing is announced while somebody goes on typing, ms. */
const silence = 2000

/** A place whose content is made anew only where it says something else. */
function keeper(node: HTMLElement): (part: Part) => void {
  let key: string | undefined
  return (part) => {
    if (part.key === key) return
    key = part.key
    node.replaceChildren(...part.make())
  }
}

/** A part that opens and closes, under a heading. */
function foldOf() {
  const heading = element('h3')
  const body = classed('div', 'live-part')
  const node = element('details', element('summary', heading), body)
  return { node, heading, put: keeper(body) }
}

/** Works something out in slices; what is begun anew ends what was running. */
function inSlices<T>(done: (value: T) => void): (steps: Generator<unknown, T, undefined>) => void {
  let waiting: ReturnType<typeof setTimeout> | undefined
  return (steps) => {
    clearTimeout(waiting)
    const go = (): void => {
      const end = performance.now() + slice
      for (;;) {
        const { done: isDone, value } = steps.next()
        if (isDone) {
          done(value as T)
          return
        }
        if (performance.now() > end) break
      }
      waiting = setTimeout(go)
    }
    waiting = setTimeout(go)
  }
}

/** Says politely what has changed, once nobody types any more. */
function announcer(node: HTMLElement): (words: string) => void {
  node.setAttribute('role', 'status')
  let last: string | undefined
  let waiting: ReturnType<typeof setTimeout> | undefined
  return (words) => {
    clearTimeout(waiting)
    if (last === undefined) last = words
    if (words === last) return
    waiting = setTimeout(() => {
      last = words
      node.textContent = words
    }, silence)
  }
}

/**
 * Puts into the page what the answers of the form make, beside its questions.
 * @param goTo Goes to the question of an entry, by its path with dots.
 * @returns `show` is called with what is worked out; what could not be leaves all as it was.
 */
export function livePanel(
  root: HTMLElement,
  goTo: GoTo,
): { readonly show: (worked: Worked) => void } {
  const sheet = sheetFor()
  const note = element('div')
  const putNote = keeper(note)
  const folds = Object.fromEntries(partNames.map((name) => [name, foldOf()])) as Readonly<
    Record<PartName, ReturnType<typeof foldOf>>
  >
  const said = classed('p', 'live-said')
  sheet.body.append(note, ...partNames.map((name) => folds[name].node))
  root.append(sheet.node, said)
  const tell = announcer(said)
  const leave: GoTo = (entry) => {
    sheet.close()
    goTo(entry)
  }
  let shown: Shown | undefined
  let screen: string | undefined
  const openFolds = (): void => {
    const here = document.body.dataset['screen'] ?? ''
    if (here === screen) return
    screen = here
    for (const name of partNames)
      folds[name].node.open = (openOn[here] ?? openElsewhere).includes(name)
  }
  const putMissing = (list: readonly Missing[] | undefined): void => {
    if (shown) folds.missing.put(missingPart(list, shown, leave))
  }
  const put = (name: (typeof quick)[number]): void => {
    if (shown) folds[name].put(quickParts[name](shown, leave))
  }
  /** Says what all of it comes to. */
  const count = ({ manual: { findings }, library: { words } }: Shown): void => {
    sheet.name({
      title: words.live.title,
      open: fill(words.live.open, { findings: findings.length }),
      close: words.live.close,
    })
    const serious = findings.filter((f) => f.severity === 'serious').length
    tell(fill(words.live.summary, { findings: findings.length, serious }))
  }
  // Before anything has been worked out there is nothing to open.
  sheet.node.hidden = true
  const begin = (first: Shown): void => {
    sheet.node.hidden = false
    for (const name of partNames)
      folds[name].heading.textContent = headings(first.library.words)[name]
    count(first)
    putMissing(undefined)
  }
  /** What nobody looks at is made when nothing else is to be done. */
  function* restOf(all: Shown): Generator<undefined, readonly Missing[], undefined> {
    yield
    count(all)
    for (const name of quick) {
      yield
      if (!folds[name].node.open) put(name)
    }
    return yield* missingOneByOne(all)
  }
  const work = inSlices(putMissing)
  for (const name of quick)
    folds[name].node.addEventListener('toggle', () => {
      if (folds[name].node.open) put(name)
    })
  globalThis.addEventListener('hashchange', () => setTimeout(openFolds))
  return {
    show: (worked) => {
      const { facility, computed, manual, ...rest } = worked
      if (!facility || !computed || !manual) return
      const isFirst = shown === undefined
      shown = { facility, computed, manual, ...rest }
      if (isFirst) begin(shown)
      openFolds()
      putNote(notePart(shown, leave))
      for (const name of quick) if (folds[name].node.open) put(name)
      work(restOf(shown))
    },
  }
}
