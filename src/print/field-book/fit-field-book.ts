import type { BookletRoom } from '../../model/booklet.ts'
import { noRoom } from '../page/no-room.ts'
import type { LayingPage } from '../page/open-page.ts'
import { pagesOfLeaf } from './booklet-order.ts'

/** How pages may be laid out. */
type Limits = {
  /** Sizes of type that are tried, points, the largest first. */
  readonly sizes: readonly number[]
  /** Pages that one page of the declaration may need. */
  readonly mostPages: number
}

/** Nothing smaller than the last is read under stress. */
const limits: Limits = { sizes: [10.6, 10.2, 9.8, 9.4, 9, 8.75, 8.5], mostPages: 4 }

type Numbering = {
  readonly carried: number
  readonly perLeaf: number
  /** A line to write on, and the least that is left free below what is printed, CSS pixels. */
  readonly line: number
  /** Type of pages that nothing is printed on. */
  readonly size: number
}

/** Pages that one page of the declaration has become; nothing where they were too many. */
type LaidOut = readonly PageElement[] | undefined

/** A page as it has come out. */
type FittedPage = {
  readonly id: string
  readonly title: string
  readonly size: number
  /** What was left free below what is printed, as a share of the page. */
  readonly free: number
}

/**
 * Sets every page in the largest type at which it fits; what does not fit in the smallest goes on on
 * further pages, row by row. Self-contained, since it is sent to the browser.
 * @returns ids of pages that do not fit at all.
 */
function layOutInPage({ sizes, mostPages }: Limits): string[] {
  const blocksOf = (leaf: PageElement): PageElement => {
    const blocks = leaf.querySelector('.blocks')
    if (!blocks) throw new Error(`a page without blocks: ${leaf.id}`)
    return blocks
  }
  const rowsOf = (block: PageElement): PageElement | null =>
    block.querySelector('tbody, ol.steps, .terms, ul.items, .e-contacts')
  const over = (leaf: PageElement): boolean => {
    const blocks = blocksOf(leaf)
    const end = blocks.lastElementChild?.getBoundingClientRect().bottom ?? 0
    // A pixel and a half for the border of a box.
    return (
      end > blocks.getBoundingClientRect().bottom - 1.5 ||
      blocks.scrollHeight > blocks.clientHeight ||
      blocks.scrollWidth > blocks.clientWidth
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
  /**
   * Lays a page out in a size of type.
   * @returns its pages, or nothing where they are more than so many, or a block is too large.
   */
  const layOut = (leaf: PageElement, size: number, most: number): LaidOut => {
    leaf.style.setProperty('--fs', `${size}pt`)
    if (!over(leaf)) return [leaf]
    if (most === 1) return undefined
    const next = leaf.cloneNode(true)
    next.id = ''
    next.dataset['of'] = leaf.dataset['of'] ?? leaf.id
    blocksOf(next).replaceChildren()
    // It is laid out when it has all that goes on there.
    while (over(leaf)) if (!moveLast(blocksOf(leaf), blocksOf(next))) return undefined
    leaf.after(next)
    next.querySelector('[data-goes-on]')?.removeAttribute('data-goes-on')
    const others = layOut(next, size, most - 1)
    return others && [leaf, ...others]
  }
  /** As few pages as possible, and of these the largest type. @returns whether that was possible. */
  const settle = (leaf: PageElement): boolean => {
    const holder = document.createElement('div')
    leaf.replaceWith(holder)
    for (let count = 1; count <= mostPages; count++)
      for (const size of sizes) {
        const trial = leaf.cloneNode(true)
        holder.replaceChildren(trial)
        trial.dataset['size'] = String(size)
        const pages = layOut(trial, size, count)
        if (!pages) continue
        holder.replaceWith(...pages)
        return true
      }
    holder.replaceWith(leaf)
    return false
  }
  const full = [...document.querySelectorAll('.leaf')].filter((leaf) => !settle(leaf))
  return full.map((leaf) => leaf.id)
}

/**
 * Numbers the pages that were laid out. Before that what can be spared goes, where the book would be
 * longer than what is carried, and pages of notes fill the last leaf; ruled lines fill what is left
 * free. Self-contained, since it is sent to the browser.
 */
function numberInPage({ perLeaf, line, carried, size }: Numbering): FittedPage[] {
  const notes = document.querySelector('.notes')
  notes?.remove()
  const count = (): number => document.querySelectorAll('.leaf').length
  for (const { id } of [...document.querySelectorAll('.leaf[data-spare]')].reverse())
    if (id !== '' && count() > carried)
      for (const gone of document.querySelectorAll(`#${id}, [data-of="${id}"]`)) gone.remove()
  while (notes && count() % perLeaf !== 0) document.body.append(notes.cloneNode(true))
  const pages = [...document.querySelectorAll('.leaf')].map((leaf, i) => {
    leaf.classList.add(i % 2 === 0 ? 'right' : 'left')
    const folio = leaf.querySelector('.folio')
    if (folio) folio.textContent = String(i + 1)
    const blocks = leaf.querySelector('.blocks')
    const { top, bottom } = (blocks ?? leaf).getBoundingClientRect()
    const free = bottom - (blocks?.lastElementChild?.getBoundingClientRect().bottom ?? top)
    for (let lines = Math.floor(free / line) - 1; lines > 0; lines--) {
      const ruled = document.createElement('div')
      ruled.className = 'ruled'
      blocks?.append(ruled)
    }
    return {
      id: leaf.id,
      title: leaf.querySelector('h1')?.textContent ?? '',
      size: Number(leaf.dataset['size'] ?? size),
      free: free / leaf.getBoundingClientRect().height,
    }
  })
  for (const slot of document.querySelectorAll('[data-page]')) {
    const at = pages.findIndex((p) => p.id === slot.dataset['page'])
    if (at >= 0) slot.textContent = (slot.dataset['says'] ?? '').replace('{page}', String(at + 1))
    else if (slot.textContent === '') slot.parentElement?.remove()
  }
  return pages
}

/**
 * Lays the book out.
 * @param scale What the page measures of a CSS pixel: 1 but where its style enlarges it.
 * @throws Error naming the pages that hold more than there is room for, or that are too many.
 */
export async function fitFieldBook(
  page: LayingPage,
  { carried, most }: BookletRoom,
  scale = 1,
): Promise<readonly FittedPage[]> {
  const full = await page.evaluate(layOutInPage, limits)
  if (full.length > 0) throw noRoom(`field book, more than a page has room for: ${full.join(', ')}`)
  const numbering = {
    carried,
    perLeaf: pagesOfLeaf,
    line: 28.5 * scale,
    size: limits.sizes[0] ?? 0,
  }
  const pages = await page.evaluate(numberInPage, numbering)
  if (pages.length > most)
    throw noRoom(`the booklet has ${pages.length} pages, and at most ${most} can be folded`)
  return pages
}
