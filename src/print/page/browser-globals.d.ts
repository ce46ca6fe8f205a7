// The few things of a page's own world that functions run inside it use; the rest of the DOM stays
// out of node code.
type PageNode = object

type PageElement = {
  id: string
  className: string
  textContent: string | null
  innerHTML: string
  hidden: boolean
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
  replaceChildren(...nodes: PageNode[]): void
  replaceWith(...nodes: PageNode[]): void
  cloneNode(deep: true): PageElement
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
  createElement(name: 'div'): PageElement
}

/** Set by `openPage`, for `freshFonts`. */
declare var fontCss: string
