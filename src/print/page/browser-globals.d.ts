// The few things of a page's own world that functions run inside it use; the rest of the DOM stays
// out of node code.
type PageNode = object

type PageElement = {
  id: string
  className: string
  textContent: string | null
  innerHTML: string
  outerHTML: string
  hidden: boolean
  /** Of a style element. */
  readonly sheet?: { readonly cssRules: Iterable<{ readonly cssText: string }> } | null
  onclick: (() => void) | null
  readonly scrollHeight: number
  readonly scrollWidth: number
  readonly clientHeight: number
  readonly clientWidth: number
  readonly dataset: Record<string, string | undefined>
  readonly style: {
    setProperty(name: string, value: string): void
    getPropertyValue(name: string): string
    display: string
  }
  readonly parentElement: PageElement | null
  contains(other: PageElement): boolean
  querySelector(selector: string): PageElement | null
  querySelectorAll(selector: string): ArrayLike<PageElement> & Iterable<PageElement>
  readonly classList: { add(name: string): void; remove(name: string): void }
  readonly lastElementChild: PageElement | null
  readonly children: ArrayLike<PageElement> & Iterable<PageElement>
  readonly childNodes: Iterable<PageNode>
  append(...nodes: PageNode[]): void
  prepend(...nodes: PageNode[]): void
  after(...nodes: PageNode[]): void
  before(...nodes: PageNode[]): void
  replaceChildren(...nodes: PageNode[]): void
  replaceWith(...nodes: PageNode[]): void
  cloneNode(deep: true): PageElement
  getAttribute(name: string): string | null
  removeAttribute(name: string): void
  remove(): void
  getBoundingClientRect(): {
    readonly top: number
    readonly bottom: number
    readonly left: number
    readonly right: number
    readonly width: number
    readonly height: number
  }
}

declare var document: PageElement & {
  readonly body: PageElement
  readonly fonts: { readonly ready: Promise<unknown> } & Iterable<{
    readonly family: string
    readonly weight: string
    readonly status: string
    load(): Promise<unknown>
  }>
  getElementById(id: string): PageElement | null
  createDocumentFragment(): PageElement
  createElement(name: 'div' | 'style'): PageElement
}

declare function getComputedStyle(element: PageElement): { readonly columnCount: string }

/** Asks the reader whether to print. */
declare function print(): void

/** Set by the script of a press; see `src/print/lay/in-page.ts`. */
declare var lay: (
  name: keyof import('../lay/in-page.ts').Layings,
  args: unknown,
) => Promise<import('../lay/in-page.ts').Laid<unknown>>

/** Set by `openPage`, for `freshFonts`. */
declare var fontCss: string

/** Set by the script of a press; see `lift-drawings.ts`. */
declare var drawings: {
  /** Forgets drawings of an earlier document and lifts those of this one. */
  readonly begin: () => void
  /** Lifts the drawings in an element, which may stand nowhere yet. */
  readonly lift: (within: PageElement) => void
  /** Where the parts of a drawing are now. */
  readonly partsOf: (drawing: PageElement) => PageElement
  readonly putBack: () => void
}

/** How high what is on a page of a sheet stands, beside the room that there is for it. */
type SheetMeasure = {
  readonly used: number
  readonly room: number
  /** Height of the parts that grow with the steps. */
  readonly growing: number
  /** Whether something is wider than the page. */
  readonly isWide: boolean
}

/** Work on sheets that asks, again and again, for the measures of what it has just set. */
type SheetWork<T> = Generator<readonly PageElement[], T, readonly SheetMeasure[]>

/** Set by `installSearch`, for `fitSheets`. */
declare var sheetSearch: {
  /** Does works side by side: all is set before anything is measured, so that all is laid out at once. */
  readonly together: <T>(works: readonly SheetWork<T>[]) => readonly T[]
  readonly fits: (measure: SheetMeasure | undefined) => boolean
  /** Finds the largest of some steps at which a page fits, and leaves it set. */
  readonly largest: (
    sheet: PageElement,
    range: { readonly from: number; readonly to: number; readonly start: number },
    set: (n: number) => void,
    grows: (measure: SheetMeasure) => number,
  ) => SheetWork<{ readonly at: number; readonly measure: SheetMeasure } | null>
}
