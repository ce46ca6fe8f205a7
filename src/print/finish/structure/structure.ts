import type { PdfDictionary, PdfReference } from '../../pdf/kinds.ts'

/** Marked content of a page. */
type Content = {
  readonly kind: 'content'
  readonly page: PdfReference
  readonly mcid: number
}

/** An annotation that belongs into the reading order. */
export type Annotated = {
  readonly kind: 'object'
  readonly page: PdfReference
  readonly object: PdfReference
}

/** A structure element. Its kids are in reading order. */
export type Element = {
  readonly kind: 'element'
  readonly reference: PdfReference
  readonly dictionary: PdfDictionary
  type: string
  kids: Item[]
}

export type Item = Content | Annotated | Element

/** The structure tree of a document (ISO 32000-1, 14.7.2). */
export type Structure = {
  readonly root: PdfDictionary
  readonly rootReference: PdfReference
  readonly tops: Element[]
  /** Every element as read, those that have since been taken out among them. */
  readonly all: readonly Element[]
}

/** Every item at and below these, in reading order. */
export function* itemsIn(items: readonly Item[]): Generator<Item> {
  for (const item of items) {
    yield item
    if (item.kind === 'element') yield* itemsIn(item.kids)
  }
}
