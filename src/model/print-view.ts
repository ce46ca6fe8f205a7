import type { BookletRoom } from './booklet.ts'
import type { UnitSystem } from './quantity/kinds.ts'

/** One part of a binder that a page lays out by itself. */
export type PartToLay = {
  /** Empty `data-page-of` slots name the places whose page numbers are put in. */
  readonly body: string
  /** Stands before its page numbers; the front has none. */
  readonly number: number | undefined
  /** Leading pages that are not counted. */
  readonly unnumbered: number
  readonly beginsRight: boolean
  /** Whether it holds procedures, which are laid out in openings. */
  readonly hasOpenings: boolean
}

/** A posted sheet, as it is rendered for the printer. */
type SheetToLay = {
  readonly id: string
  readonly pages: readonly string[]
  readonly layouts: readonly { readonly name: string; readonly pages: readonly number[] }[]
  readonly drawings: readonly { readonly size: 'beside' | 'below'; readonly body: string }[]
}

/** What a page lays out before the browser prints it. */
export type PrintWork =
  | {
      readonly kind: 'binder'
      /** Room for text on a page, CSS pixels. */
      readonly area: { readonly width: number; readonly height: number }
      readonly sides: 1 | 2
      readonly parts: readonly PartToLay[]
    }
  | {
      readonly kind: 'sheets'
      /** Height of the capitals of steps, at the least, mm. */
      readonly capitals: number
      readonly system: UnitSystem
      /** Each in every layout that it may have. */
      readonly sheets: readonly SheetToLay[]
    }
  | {
      readonly kind: 'booklet'
      readonly body: string
      readonly room: BookletRoom
      /** Whether two pages stand on each side of a leaf, to be folded. */
      readonly folds: boolean
    }
  | { readonly kind: 'cards'; readonly body: string }

/** Where the document keeps its work. */
export const printWorkId = 'print-work'

/** Elements of the document that the script fills and watches. */
export const printPlaces = {
  /** What is printed. */ book: 'print-book',
  /** How far it is, or what went wrong. */ state: 'print-state',
  /** Told where margin boxes are not printed. */ noFeet: 'print-no-feet',
  button: 'print-button',
} as const
