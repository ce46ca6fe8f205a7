import type { UnitSystem } from './quantity/kinds.ts'

/** What is sold for binders of one size of paper; mm. */
type BinderStock = {
  /** How much wider than the paper leaves with cut tabs are. */
  readonly tab: number
  /** Pocket card, width and height, as sleeves are made for it. */
  readonly card: readonly [number, number]
}

type PaperSize = {
  /** Width and height upright, mm. */
  readonly size: readonly [number, number]
  /** Whose paper it is: its style sheets say inches or millimeters. */
  readonly system: UnitSystem
  /**
   * How much larger than on the small paper of its system everything on a posted sheet is, in each
   * direction.
   */
  readonly zoom: number
  /** Height of the capitals of steps on posted sheets, at the least, mm. */
  readonly capitals: number
  /** Posted sheets are printed on it where a facility of its system does not ask for others. */
  readonly isUsual: boolean
  /** Only where binders of this size are sold. */
  readonly binder?: BinderStock
}

/**
 * Capitals are read from 300 times their height (ANSI Z535.2): on the large paper from 6 ft, on the
 * small one, which is carried about, from 4 ft or so.
 */
const [onWall, onDesk] = [6.1, 4.5]

/**
 * Every paper there is. Posted sheets are printed on any of them, a binder on those that have
 * `binder`.
 */
const papers = {
  letter: {
    size: [215.9, 279.4],
    system: 'us',
    zoom: 1,
    capitals: onDesk,
    isUsual: true,
    // Tabs of half an inch; cards of 3.5 × 5 in.
    binder: { tab: 12.7, card: [88.9, 127] },
  },
  tabloid: { size: [279.4, 431.8], system: 'us', zoom: 1.35, capitals: onWall, isUsual: true },
  a4: {
    size: [210, 297],
    system: 'metric',
    zoom: 1,
    capitals: onDesk,
    isUsual: true,
    // The photo size nearest to 3.5 × 5 in, in whole millimeters.
    binder: { tab: 15, card: [89, 127] },
  },
  a3: { size: [297, 420], system: 'metric', zoom: 1.35, capitals: onWall, isUsual: true },
} as const satisfies Readonly<Record<string, PaperSize>>

/** A paper of posted sheets. */
export type SheetPaper = keyof typeof papers

/** A paper of binders. */
export type Paper = {
  [P in SheetPaper]: (typeof papers)[P] extends { readonly binder: BinderStock } ? P : never
}[SheetPaper]

export const sheetPapers = Object.keys(papers) as readonly SheetPaper[]

const hasBinder = (paper: SheetPaper): paper is Paper => 'binder' in papers[paper]

export const binderPapers: readonly Paper[] = sheetPapers.filter(hasBinder)

/** Width and height of a paper, mm. */
export const paperSize = (paper: SheetPaper): readonly [number, number] => papers[paper].size

/** How much larger than usual everything on a posted sheet of this paper is. */
export const paperZoom = (paper: SheetPaper): number => papers[paper].zoom

/** What is sold for binders of a paper. */
export const binderStock = (paper: Paper): BinderStock => papers[paper].binder

/** Papers for posted sheets where a facility asks for none, by the paper of its binder. */
export const usualSheetPapers = (paper: Paper): readonly SheetPaper[] =>
  sheetPapers.filter((p) => papers[p].isUsual && papers[p].system === papers[paper].system)

/** Lengths as style sheets say them, in the unit that a paper is measured in. */
function lengthsOf(paper: SheetPaper, size: readonly [number, number]): readonly [string, string] {
  const length = (mm: number): string =>
    papers[paper].system === 'us' ? `${mm / mmOfInch}in` : `${mm}mm`
  return [length(size[0]), length(size[1])]
}

/** The same of a leaf folded in half: `5.5in` and `8.5in`. */
export const foldedLengths = (paper: SheetPaper): readonly [string, string] =>
  lengthsOf(paper, foldedSize(paper))

/** Width and height as style sheets say them: `8.5in` and `11in`. */
export function paperLengths(paper: SheetPaper): readonly [string, string] {
  return lengthsOf(paper, papers[paper].size)
}

/** Width and height of a leaf of this paper folded in half, mm: its pages are those of a booklet. */
const foldedSize = (paper: SheetPaper): readonly [number, number] => {
  const [width, height] = papers[paper].size
  return [height / 2, width]
}

export const mmOfInch = 25.4

/**
 * How dividers of a binder are made: none, leaves of its own paper with a printed tab, or leaves
 * with cut tabs from a shop.
 */
export const dividerKinds = ['none', 'leaves', 'tab-stock'] as const
export type DividerKind = (typeof dividerKinds)[number]

/** Height of the capitals of steps on posted sheets of a paper, at the least, mm. */
export const leastCapitals = (paper: SheetPaper): number => papers[paper].capitals
