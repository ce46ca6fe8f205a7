/** A file of the library: its path in the project and what it says. */
export type LibraryFile = { readonly path: string; readonly data: unknown }

/** What the page on which a facility file is filled in carries: the library, as it was read. */
export type PageData = {
  /** Whether the program stands behind the page, or the page stands alone. */
  readonly kind: 'program' | 'page'
  /** Files of the library by their part: one, or a list. */
  readonly library: Readonly<Record<string, LibraryFile | readonly LibraryFile[]>>
  /** References (CSL-JSON). */
  readonly sources: readonly unknown[]
  /** Fonts of the page by their rule without its source: WOFF2 in Base64. */
  readonly fonts: readonly PageFont[]
}

export type PageFont = {
  readonly family: string
  readonly weight: number
  readonly data: string
}

/** Where a page holds its data. */
export const pageDataId = 'page-data'
