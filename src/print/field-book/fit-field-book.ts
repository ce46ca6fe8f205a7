import type { BrowserPage } from '../page/open-page.ts'

/** How pages may be laid out. */
type Limits = {
  /** Sizes of type that are tried, points, the largest first. */
  readonly sizes: readonly number[]
  /** A book folded from leaves is a multiple of this. */
  readonly perLeaf: number
  /** Pages that one page of the declaration may need. */
  readonly mostPages: number
  /** A line to write on, and the least that is left free below what is printed, CSS pixels. */
  readonly line: number
  /** Pages that somebody carries. */
  readonly most: number
}

/** Nothing smaller than the last is read under stress. */
const limits: Omit<Limits, 'most'> = {
  sizes: [10.6, 10.2, 9.8, 9.4, 9, 8.75, 8.5],
  perLeaf: 4,
  mostPages: 4,
  line: 28.5,
}

/** A page as it has come out. */
type FittedPage = {
  readonly id: string
  readonly title: string
  readonly size: number
  /** What was left free below what is printed, as a share of the page. */
  readonly free: number
}

type Fitted = { readonly full: readonly string[]; readonly pages: readonly FittedPage[] }

/**
 * Sets every page in the largest type at which it fits; what does not fit in the smallest goes on on
 * further pages, row by row. Ruled lines fill what is left, pages of notes fill the last leaf, and
 * every page gets its number. Self-contained, since it is sent to the browser.
 */
function fitInPage({ sizes, perLeaf, mostPages, line, most }: Limits): Fitted {
  const one = (e: PageElement, selector: string): PageElement => {
    const found = e.querySelector(selector)
    if (!found) throw new Error(`a page without ${selector}`)
    return found
  }
  const blocksOf = (leaf: PageElement): PageElement => one(leaf, '.blocks')
  const rowsOf = (block: PageElement): PageElement | null =>
    block.querySelector('tbody, ol.steps, .terms, ul.items')
  const over = (leaf: PageElement): boolean => {
    const blocks = blocksOf(leaf)
    const end = blocks.lastElementChild?.getBoundingClientRect().bottom ?? 0
    // A pixel and a half for the border of a box.
    return (
      end > blocks.getBoundingClientRect().bottom - 1.5 || blocks.scrollWidth > blocks.clientWidth
    )
  }
  /** The same block on the next page, for its last rows; its heading is not said again. */
  const goOn = (block: PageElement, next: PageElement): PageElement => {
    const begun = next.querySelector('[data-goes-on]')
    if (begun) return begun
    const copy = block.cloneNode(true)
    copy.dataset['goesOn'] = ''
    rowsOf(copy)?.replaceChildren()
    for (const said of [...copy.querySelectorAll('h2, p')]) said.remove()
    next.prepend(copy)
    return copy
  }
  /** Moves the last row, or the last block, to the next page. @returns whether there was any. */
  const moveLast = (blocks: PageElement, next: PageElement): boolean => {
    const last = blocks.lastElementChild
    const rows = last && rowsOf(last)
    if (!last) return false
    if (rows?.lastElementChild && rows.children.length > 2) {
      const row = rows.lastElementChild
      rowsOf(goOn(last, next))?.prepend(row)
      return true
    }
    if (blocks.children.length < 2) return false
    // Few rows are not torn: those that were moved come back first.
    const begun = next.querySelector('[data-goes-on]')
    const moved = begun && rowsOf(begun)
    if (rows && moved) rows.append(...moved.children)
    begun?.remove()
    next.prepend(last)
    return true
  }
  /** Lays a page out in a size of type. @returns its pages, or nothing where a block is too large. */
  const layOut = (leaf: PageElement, size: number): readonly PageElement[] | undefined => {
    leaf.style.setProperty('--fs', `${size}pt`)
    if (!over(leaf)) return [leaf]
    const next = leaf.cloneNode(true)
    next.id = ''
    blocksOf(next).replaceChildren()
    leaf.after(next)
    while (over(leaf)) if (!moveLast(blocksOf(leaf), blocksOf(next))) return undefined
    const begun = next.querySelector('[data-goes-on]')
    if (begun) begun.removeAttribute('data-goes-on')
    const others = layOut(next, size)
    return others && [leaf, ...others]
  }
  /** As few pages as possible, and of these the largest type. */
  const settle = (leaf: PageElement): { pages: readonly PageElement[]; size: number } | undefined => {
    const holder = document.createElement('div')
    leaf.replaceWith(holder)
    for (let count = 1; count <= mostPages; count++)
      for (const size of sizes) {
        const trial = leaf.cloneNode(true)
        holder.replaceChildren(trial)
        const pages = layOut(trial, size)
        if (!pages || pages.length > count) continue
        holder.replaceWith(...pages)
        return { pages, size }
      }
    holder.replaceWith(leaf)
    return undefined
  }
  const notes = one(document.body, '.notes')
  notes.remove()
  const full: string[] = []
  const all: { readonly leaf: PageElement; readonly size: number }[] = []
  for (const leaf of [...document.querySelectorAll('.leaf')]) {
    const settled = settle(leaf)
    if (settled) all.push(...settled.pages.map((page) => ({ leaf: page, size: settled.size })))
    else full.push(leaf.id)
  }
  // What can be spared goes, the last of it first, before the book is longer than what is carried.
  for (const spare of [...document.querySelectorAll('[data-spare]')].reverse()) {
    if (all.length <= most) break
    const at = all.findIndex(({ leaf }) => leaf === spare)
    spare.remove()
    all.splice(at, 1)
  }
  while (full.length === 0 && all.length % perLeaf !== 0) {
    const leaf = notes.cloneNode(true)
    document.body.append(leaf)
    all.push({ leaf, size: sizes[0] ?? 0 })
  }
  const pages = all.map(({ leaf, size }, i) => {
    leaf.classList.add(i % 2 === 0 ? 'right' : 'left')
    one(leaf, '.folio').textContent = String(i + 1)
    const blocks = blocksOf(leaf)
    const { top, bottom } = blocks.getBoundingClientRect()
    const free = bottom - (blocks.lastElementChild?.getBoundingClientRect().bottom ?? top)
    for (let lines = Math.floor(free / line) - 1; lines > 0; lines--) {
      const ruled = document.createElement('div')
      ruled.className = 'ruled'
      blocks.append(ruled)
    }
    const { height } = leaf.getBoundingClientRect()
    return { id: leaf.id, title: one(leaf, 'h1').textContent ?? '', size, free: free / height }
  })
  for (const slot of document.querySelectorAll('[data-page]')) {
    const at = pages.findIndex((p) => p.id === slot.dataset['page'])
    const says = slot.dataset['says'] ?? ''
    if (at >= 0) slot.textContent = says.replace('{page}', String(at + 1))
    else if (slot.textContent === '') slot.parentElement?.remove()
  }
  return { full, pages }
}

/**
 * Lays the book out.
 * @param most Pages that somebody carries.
 * @throws Error naming the pages that hold more than there is room for, or that are too many.
 */
export async function fitFieldBook(page: BrowserPage, most: number): Promise<readonly FittedPage[]> {
  const { full, pages } = await page.evaluate(fitInPage, { ...limits, most })
  if (full.length > 0) throw new Error(`more than a page has room for: ${full.join(', ')}`)
  if (pages.length > most)
    throw new Error(`the field book has ${pages.length} pages, and at most ${most} are carried`)
  return pages
}
