/** A file of the library: its path in the project and what it says. */
export type LibraryFile = { readonly path: string; readonly data: unknown }

/** A font with the faces that it is taken for. */
export type PageFont = {
  /** Its name as a file. */
  readonly name: string
  /** WOFF2 in Base64. */
  readonly data: string
  readonly faces: readonly {
    readonly family: string
    readonly weight: number
    /** The characters that it is taken for, as CSS writes them; all of them when it is left out. */
    readonly range?: string | undefined
    /** What a style sheet says of it, with `{url}` in place of where it is. */
    readonly rule: string
  }[]
}

/** What sites are made of, where the page makes them itself; templates come as a script. */
export type PageMakings = {
  readonly styles: Readonly<Record<string, string>>
  /** Scripts of the site's pages, each whole in one text. */
  readonly scripts: Readonly<Record<string, string>>
  /** Script of the worker that keeps a site on a phone. */
  readonly worker: string
  /** Script of documents that lay themselves out to be printed. */
  readonly layScript: string
  /** Icons in Base64, by their path. */
  readonly icons: readonly { readonly path: string; readonly data: string }[]
  readonly licences: readonly { readonly path: string; readonly data: string }[]
}

/** What the page on which a facility file is filled in carries. */
export type PageData = {
  /** Whether the program stands behind the page, or the page stands alone. */
  readonly kind: 'program' | 'page'
  /** Files of the library by their part: one, or a list; as they were read. */
  readonly library: Readonly<Record<string, LibraryFile | readonly LibraryFile[]>>
  /** References (CSL-JSON). */
  readonly sources: readonly unknown[]
  readonly fonts: readonly PageFont[]
  readonly makings?: PageMakings
}

/** Where a page holds its data. */
export const pageDataId = 'page-data'
