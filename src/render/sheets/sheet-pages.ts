import type { ManualSheet, SheetGroup } from '../../model/manual/procedure.ts'

/** What stands on one page of a posted sheet. */
type SheetPage = {
  /** Warnings, calls and large figures. */
  readonly head: boolean
  /** Drawing, table and code beside the steps. */
  readonly side: boolean
  /** The drawing below what is found, or above the steps that cite it. */
  readonly drawn: boolean
  readonly look: boolean
  readonly groups: readonly SheetGroup[]
  readonly done: boolean
  readonly stop: boolean
}

/** One way of parting a sheet over pages. */
export type SheetLayout = { readonly name: string; readonly pages: readonly SheetPage[] }

/** Steps that short ways may share a page with, the most first. */
const mostSteps = [16, 13, 10]

const steps = (groups: readonly SheetGroup[]): number =>
  groups.reduce((sum, g) => sum + g.steps.length, 0)

/** A group in two halves, for a way of working that is too long for one page. */
function halves(group: SheetGroup): readonly SheetGroup[] {
  const half = Math.ceil(group.steps.length / 2)
  return [
    { ...group, steps: group.steps.slice(0, half) },
    { ...group, steps: group.steps.slice(half) },
  ].filter((g) => g.steps.length > 0)
}

/** A page of steps in two; what all ways begin with stays with the first half. */
function halfPages(page: readonly SheetGroup[]): readonly (readonly SheetGroup[])[] {
  const common = page.filter((group) => group.letter === undefined)
  const ways = page.filter((group) => group.letter !== undefined)
  if (ways.length === 0) return page.flatMap(halves).map((group) => [group])
  return ways.flatMap(halves).map((group, i) => (i === 0 ? [...common, group] : [group]))
}

/** Pages of steps: what to be done stands on the last, when to stop on each. */
const stepPages = (pages: readonly (readonly SheetGroup[])[]): readonly SheetPage[] =>
  pages.map((groups, i) => ({
    head: false,
    side: false,
    drawn: false,
    look: false,
    groups,
    done: i === pages.length - 1,
    stop: true,
  }))

/** Where the drawing of a sheet of several pages stands: the best first. */
const drawingAt = ['head', 'steps', 'none'] as const

type DrawingAt = (typeof drawingAt)[number]

/** The drawing on the first page on which a step cites it. */
function withDrawing(
  pages: readonly SheetPage[],
  drawing: string | undefined,
): readonly SheetPage[] {
  const at = pages.findIndex((page) =>
    page.groups.some((g) => g.steps.some((step) => step.drawing === drawing)),
  )
  return pages.map((page, i) => (i === at ? { ...page, drawn: true } : page))
}

/** A page for each way; what all begin with stands on each, since a page may be read alone. */
function byWay(groups: readonly SheetGroup[]): readonly (readonly SheetGroup[])[] {
  const [first, ...ways] = groups
  if (!first || ways.length === 0) return [groups]
  return first.letter === undefined ? ways.map((way) => [first, way]) : groups.map((g) => [g])
}

/** Ways that follow each other on one page, as long as it has no more steps than that. */
function packed(
  ways: readonly (readonly SheetGroup[])[],
  most: number,
): readonly (readonly SheetGroup[])[] {
  const pages: (readonly SheetGroup[])[] = []
  for (const way of ways) {
    const last = pages.at(-1) ?? []
    const both = [...last, ...way.filter((group) => !last.includes(group))]
    if (last.length > 0 && steps(both) <= most) pages[pages.length - 1] = both
    else pages.push(way)
  }
  return pages
}

/**
 * The ways of parting a sheet, from all on one page with a column beside the steps to a page for
 * every half of a way. None leaves out a way or a warning; the printer takes the first in which all
 * steps are large enough.
 */
export function sheetLayouts(sheet: ManualSheet): readonly SheetLayout[] {
  const { groups } = sheet
  const look = sheet.look.length > 0
  const whole = { head: true, drawn: false, look, groups, done: true, stop: true }
  // Where somebody is called, the first page is for that: it has no drawing, and when to stop stands
  // beside all steps.
  const stop = sheet.calls.length === 0
  const decide = { ...whole, side: false, groups: [], done: false, stop }
  /** Without anything to decide the first steps stand below the head. */
  const parted = (
    pages: readonly (readonly SheetGroup[])[],
    drawing: DrawingAt,
  ): readonly SheetPage[] => {
    const work =
      drawing === 'steps' ? withDrawing(stepPages(pages), sheet.drawing) : stepPages(pages)
    if (look || sheet.calls.length > 0) return [{ ...decide, drawn: drawing === 'head' }, ...work]
    const [first, ...others] = work
    return first ? [{ ...first, head: true }, ...others] : []
  }
  const ways = byWay(groups)
  const half = ways.flatMap((page) => (steps(page) > 5 ? halfPages(page) : [page]))
  const layouts: SheetLayout[] = [
    { name: 'beside', pages: [{ ...whole, side: true }] },
    ...(sheet.drawing === undefined
      ? []
      : [{ name: 'whole drawn', pages: [{ ...whole, side: false, drawn: true }] }]),
    { name: 'whole', pages: [{ ...whole, side: false }] },
    ...[[groups], ...mostSteps.map((most) => packed(ways, most)), ways, half].flatMap((pages) =>
      drawingAt.map((at) => ({
        name: `${pages.map(steps).join('+')} ${at}`,
        pages: parted(pages, sheet.drawing === undefined || (at === 'head' && !stop) ? 'none' : at),
      })),
    ),
  ]
  const seen = new Set<string>()
  return layouts.filter(({ pages }) => {
    const key = JSON.stringify(pages)
    return seen.has(key) ? false : seen.add(key)
  })
}
