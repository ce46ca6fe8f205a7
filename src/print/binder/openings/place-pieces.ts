/** What a piece of a procedure is, which says where it may stand. */
type PiecePart =
  | 'decide'
  | 'box'
  | 'method'
  | 'ends'
  | 'drawing'
  | 'failures'
  | 'records'
  | 'why'
  | 'lesson'

/** A piece of a procedure as measured, CSS pixels. */
export type Piece = {
  readonly part: PiecePart
  readonly height: number
  /** Heights of the steps of a method; what is left of the whole stands above the first. */
  readonly steps: readonly number[]
}

/** A piece on a page: whole, or those of its steps from `from` until before `until`. */
type Placed = {
  readonly piece: number
  readonly steps: { readonly from: number; readonly until: number } | undefined
}

/** Pages in their order: left, right, left and so on. */
export type Pages = readonly (readonly Placed[])[]

/** Steps of a torn method that stay together on either page. */
const fewestSteps = 2

/** Pages that one procedure may need, at the most. */
const mostPages = 8

type Page = { readonly placed: Placed[]; room: number }

/** How the work is laid out behind what is decided. */
type Way = {
  /** Whether it may begin on the left, below what is decided. */
  readonly beginsLeft: boolean
  /** Whether a method may go on from a left page to the right one that faces it. */
  readonly tears: boolean
  /** Whether reasons stand apart, at the end of the section. */
  readonly leavesWhy: boolean
}

/** The better the reader is served, the earlier. */
const ways: readonly Way[] = [false, true].flatMap((leavesWhy) => [
  { beginsLeft: false, tears: false, leavesWhy },
  { beginsLeft: true, tears: false, leavesWhy },
  { beginsLeft: false, tears: true, leavesWhy },
  { beginsLeft: true, tears: true, leavesWhy },
])

const sum = (heights: readonly number[]): number => heights.reduce((all, h) => all + h, 0)

const isLeft = (page: number): boolean => page % 2 === 0

/** How many steps fit into this room, so that both sides of the tear keep enough; else none. */
function stepsInto({ height, steps }: Piece, room: number): number {
  const head = height - sum(steps)
  const fitting = steps.filter((_, i) => head + sum(steps.slice(0, i + 1)) <= room).length
  const most = Math.min(fitting, steps.length - fewestSteps)
  return most >= fewestSteps ? most : 0
}

/** Pages that are filled in their order. */
type Leaves = { readonly pages: readonly Page[]; at: number }

const pageAt = ({ pages }: Leaves, at: number): Page => pages[at] ?? { placed: [], room: 0 }

function put(page: Page, piece: number, height: number, steps?: Placed['steps']): void {
  page.placed.push({ piece, steps })
  page.room -= height
}

/** Places a method on the page that is being filled, over it and the facing one, or on the next. */
function placeMethod(leaves: Leaves, i: number, method: Piece, tears: boolean): boolean {
  for (; leaves.at < leaves.pages.length; leaves.at++) {
    const page = pageAt(leaves, leaves.at)
    if (method.height <= page.room) {
      put(page, i, method.height)
      return true
    }
    const from = tears && isLeft(leaves.at) ? stepsInto(method, page.room) : 0
    const rest = sum(method.steps.slice(from))
    const facing = pageAt(leaves, leaves.at + 1)
    if (from > 0 && rest <= facing.room) {
      put(page, i, method.height - rest, { from: 0, until: from })
      put(facing, i, rest, { from, until: method.steps.length })
      leaves.at += 1
      return true
    }
  }
  return false
}

/** The box stands over the first method, never by itself at the foot of a page. */
function placeBox(leaves: Leaves, i: number, box: Piece, first: Piece | undefined, way: Way): void {
  const fits = (page: Page, at: number): boolean => {
    const room = page.room - box.height
    if (!first || first.height <= room) return room >= 0
    return way.tears && isLeft(at) && stepsInto(first, room) > 0
  }
  const found = leaves.pages.findIndex((page, at) => at >= leaves.at && fits(page, at))
  if (found >= 0) leaves.at = found
  put(pageAt(leaves, leaves.at), i, box.height)
}

/** Pages on which a piece that is not part of the work is best read, the best first. */
function wanted(part: PiecePart, last: number): readonly number[] {
  const all = Array.from({ length: mostPages }, (_, page) => page)
  if (part === 'ends') return [last, ...all.filter((p) => p !== last)]
  return part === 'drawing' ? [...all.filter((p) => !isLeft(p) && p <= last), ...all] : all
}

/** What is not part of the work, the most needed first. */
const beside: readonly PiecePart[] = ['ends', 'drawing', 'failures', 'records', 'why']

/** How pieces stand below one another on a page. */
const readingOrder: readonly PiecePart[] = [
  'decide',
  'box',
  'method',
  'drawing',
  'failures',
  'why',
  'records',
  'lesson',
  'ends',
]

const inOrder = ({ placed }: Page, pieces: readonly Piece[]): readonly Placed[] => {
  const rank = ({ piece }: Placed): number => readingOrder.indexOf(pieces[piece]?.part ?? 'ends')
  return [...placed].sort((a, b) => rank(a) - rank(b))
}

const usedPages = (pages: readonly Page[]): readonly Page[] =>
  pages.slice(0, pages.findLastIndex((page) => page.placed.length > 0) + 1)

/**
 * Puts a lesson where there is room for it, on a left page before a right one, or on the page that
 * would be empty; else it is left over.
 */
function placeLessons(pages: readonly Page[], pieces: readonly Piece[]): void {
  const leaves = Math.ceil(usedPages(pages).length / 2)
  const inOpenings = pages.slice(0, leaves * 2)
  const leftFirst = [
    ...inOpenings.filter((_, at) => isLeft(at)),
    ...inOpenings.filter((_, at) => !isLeft(at)),
  ]
  for (const [i, { part, height }] of pieces.entries()) {
    if (part !== 'lesson') continue
    const page = leftFirst.find(({ room }) => height <= room)
    if (page) put(page, i, height)
  }
}

function layOut(pieces: readonly Piece[], height: number, way: Way): Pages | undefined {
  const pages = Array.from({ length: mostPages }, (): Page => ({ placed: [], room: height }))
  const leaves: Leaves = { pages, at: way.beginsLeft ? 0 : 1 }
  const all = [...pieces.entries()]
  const methods = all.filter(([, p]) => p.part === 'method')
  for (const [i, p] of all) if (p.part === 'decide') put(pageAt(leaves, 0), i, p.height)
  for (const [i, p] of all) if (p.part === 'box') placeBox(leaves, i, p, methods[0]?.[1], way)
  for (const [i, method] of methods)
    if (!placeMethod(leaves, i, method, way.tears)) return undefined
  for (const part of beside.filter((other) => other !== 'why' || !way.leavesWhy))
    for (const [i, p] of all.filter(([, other]) => other.part === part)) {
      const page = wanted(part, leaves.at).find((at) => p.height <= pageAt(leaves, at).room)
      if (page === undefined) return undefined
      put(pageAt(leaves, page), i, p.height)
    }
  if (pages.some((page) => page.room < 0)) return undefined
  placeLessons(pages, pieces)
  return usedPages(pages).map((page) => inOrder(page, pieces))
}

const openings = (pages: Pages): number => Math.ceil(pages.length / 2)

/** Whether the reader turns a leaf between the box and the first step. */
function isBoxApart(pages: Pages, pieces: readonly Piece[]): boolean {
  const at = (part: PiecePart): number =>
    pages.findIndex((page) => page.some(({ piece }) => pieces[piece]?.part === part))
  return at('box') >= 0 && Math.floor(at('box') / 2) !== Math.floor(at('method') / 2)
}

/**
 * Lays a procedure out in openings: on the left what is decided, on the right the work; a longer
 * one goes on between two methods. Where that does not do, the work begins on the left, and a method
 * may go on from a left page to the one that faces it, but never over a leaf. The box of hazards is
 * in one opening with the first step wherever that is possible.
 * @param settings The same pieces as they measure in each setting, the widest first.
 * @param height Of a page's text.
 * @returns the fewest openings, which setting they need, and what is on each page; nothing when a
 * piece is higher than a page. A lesson for which there is no room is on none; nor are reasons where
 * that spares an opening.
 */
export function placePieces(
  settings: readonly (readonly Piece[])[],
  height: number,
): { readonly setting: number; readonly pages: Pages } | undefined {
  const found = ways.flatMap((way) =>
    settings.flatMap((pieces, setting) => {
      const pages = layOut(pieces, height, way)
      if (!pages) return []
      return [
        { setting, pages, openings: openings(pages), apart: isBoxApart(pages, pieces) ? 1 : 0 },
      ]
    }),
  )
  const [first] = found.sort((a, b) => a.openings - b.openings || a.apart - b.apart)
  return first && { setting: first.setting, pages: first.pages }
}
