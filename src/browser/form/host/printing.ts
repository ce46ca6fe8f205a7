import { inks } from '../../../model/ink.ts'
import type { Manual } from '../../../model/manual.ts'
import { emergencySheet } from '../../../model/sheet-names.ts'
import { binderToPrint } from '../../../render/print-view/binder-to-print.ts'
import { type PrintAssets, printView, type ToPrint } from '../../../render/print-view/print-view.ts'
import { sheetsToPrint } from '../../../render/print-view/sheets-to-print.ts'
import {
  cardsToPrint,
  fieldBookToPrint,
  handoutToPrint,
} from '../../../render/print-view/small-to-print.ts'
import { button, classed, element } from '../../element.ts'

/** A choice among a few, and what is chosen. */
type Choice<T extends string> = { readonly node: HTMLElement; readonly chosen: () => T }

function choice<T extends string>(
  label: string,
  options: readonly (readonly [value: T, words: string])[],
): Choice<T> {
  const select = element('select', ...options.map(([value, words]) => new Option(words, value)))
  const node = element('label', `${label} `, select)
  const [first] = options
  return {
    node,
    chosen: () => options.find(([value]) => value === select.value)?.[0] ?? (first?.[0] as T),
  }
}

/**
 * Opens a document that prints itself in a page of its own. The page is opened before the document is
 * made: a browser lets only a touch open one.
 * @returns whether the browser has opened it.
 */
function openPrint(make: () => string): boolean {
  const page = globalThis.open('', '_blank')
  if (!page) return false
  const show = (): void => {
    page.location.href = URL.createObjectURL(new Blob([make()], { type: 'text/html' }))
  }
  // The new page is shown before this one is busy.
  setTimeout(show, 50)
  return true
}

type Offer = {
  readonly title: string
  readonly about?: string
  readonly choices?: readonly Choice<string>[]
  readonly make: () => ToPrint
}

/** No procedure is called so. */
const all = ''

/** Which sheets there are: all of them, that of the emergency, and one for each procedure. */
const sheetTitles = (
  { procedures }: Manual,
  { words }: PrintAssets,
): readonly [string, string][] => [
  [all, words.printing.all],
  [emergencySheet, words.emergency.title],
  ...procedures.map((p): [string, string] => [p.id, `${p.number}  ${p.title}`]),
]

/** What can be printed of a manual. */
function offersOf(manual: Manual, assets: PrintAssets): readonly Offer[] {
  const { words } = assets
  const { facility } = manual
  const inkOf = (): Choice<(typeof inks)[number]> =>
    choice(
      words.printing.ink,
      // What the fair prints its binder in stands first.
      [...inks]
        .sort((a, b) => Number(b === facility.binder.ink) - Number(a === facility.binder.ink))
        .map((ink) => [ink, words.printing.inks[ink]] as const),
    )
  const [ofBinder, ofSheets] = [inkOf(), inkOf()]
  const paper = choice(
    words.printing.paper,
    facility.sheetPapers.map((name) => [name, words.printing.papers[name]] as const),
  )
  const which = choice(words.printing.which, sheetTitles(manual, assets))
  const hasBook = manual.fieldBook.pages.length > 0
  return [
    {
      title: words.printing.binder,
      about: words.printing.binderAbout,
      choices: [ofBinder],
      make: () => binderToPrint(manual, assets, ofBinder.chosen()),
    },
    {
      title: words.printing.sheets,
      about: words.printing.sheetsAbout,
      choices: [which, paper, ofSheets],
      make: () =>
        sheetsToPrint(manual, assets, {
          paper: paper.chosen(),
          ink: ofSheets.chosen(),
          id: which.chosen() === all ? undefined : which.chosen(),
        }),
    },
    ...(hasBook
      ? [
          {
            title: words.printing.booklet,
            about: words.fieldBook.fold,
            make: () => fieldBookToPrint(manual, assets, true),
          },
          { title: words.printing.enlarged, make: () => fieldBookToPrint(manual, assets, false) },
          { title: words.printing.handout, make: () => handoutToPrint(manual, assets) },
        ]
      : []),
    ...(manual.cards.length > 0
      ? [{ title: words.printing.cards, make: () => cardsToPrint(manual, assets) }]
      : []),
  ]
}

/** Offers what the browser can print of a manual by itself. */
export function printing(manual: Manual, assets: PrintAssets): HTMLElement {
  const said = classed('p', 'fault')
  said.setAttribute('role', 'alert')
  const { words } = assets
  const items = offersOf(manual, assets).map(({ title, about, choices = [], make }) =>
    element(
      'li',
      button(title, () => {
        const isOpen = openPrint(() => printView(make(), manual, assets))
        said.textContent = isOpen ? '' : words.printing.blocked
      }),
      ...choices.map(({ node }) => node),
      ...(about === undefined ? [] : [classed('p', 'soft', about)]),
    ),
  )
  return classed(
    'section',
    'products printing',
    element('h2', words.printing.title),
    element('p', words.printing.about),
    said,
    classed('ul', 'offers', ...items),
    element('p', words.maker.onlyProgram),
  )
}
