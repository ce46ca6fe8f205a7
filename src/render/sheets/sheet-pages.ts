import type { ManualSheet, SheetGroup } from '../../model/manual/procedure.ts'

/**
 * How the drawing stands on a page: across it; in a column beside the steps, above what is done
 * right and when to stop; there alone; or at the foot, beside these.
 */
const drawnAs = ['across', 'beside', 'alone', 'foot'] as const

/** What stands on one page of a posted sheet. */
type SheetPage = {
  /** Warnings, calls and large figures. */
  readonly head: boolean
  /** Table and code beside the steps. */
  readonly side: boolean
  readonly drawn: (typeof drawnAs)[number] | undefined
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
    drawn: undefined,
    look: false,
    groups,
    done: i === pages.length - 1,
    stop: true,
  }))

/** The page of steps that cites the drawing, else the first. */
const citing = (pages: readonly SheetPage[], drawing: string | undefined): number =>
  Math.max(
    0,
    pages.findIndex((page) =>
      page.groups.some((g) => g.steps.some((step) => step.drawing === drawing)),
    ),
  )

const withDrawing = (
  pages: readonly SheetPage[],
  at: number,
  drawn: SheetPage['drawn'],
): readonly SheetPage[] => pages.map((page, i) => (i === at ? { ...page, drawn } : page))

/** A page for each way; what all begin with stands on each, since a page may be read alone. */
function byWay(groups: readonly SheetGroup[]): readonly (readonly SheetGroup[])[] {
  const [first, ...others] = groups
  if (!first || others.length === 0) return [groups]
  return first.letter === undefined ? others.map((way) => [first, way]) : groups.map((g) => [g])
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

/** What a page more may cost: a sheet without its drawing counts as so many pages longer. */
const forTheDrawing = 1.5

const pagesAsCounted = ({ pages }: SheetLayout, drawing: string | undefined): number =>
  pages.length + (drawing === undefined || pages.some((p) => p.drawn) ? 0 : forTheDrawing)

/** Everything on one page; with a drawing in each way in which it may stand there. */
function onOnePage(whole: Omit<SheetPage, 'side' | 'drawn'>, isDrawn: boolean): SheetLayout[] {
  const page = (name: string, side: boolean, drawn: SheetPage['drawn']): SheetLayout => ({
    name,
    pages: [{ ...whole, side, drawn }],
  })
  if (!isDrawn) return [page('beside', true, undefined), page('whole', false, undefined)]
  return [
    page('beside', true, 'beside'),
    ...drawnAs.map((drawn) => page(`whole ${drawn}`, false, drawn)),
    page('whole', false, undefined),
  ]
}

/**
 * The ways of parting a sheet, from all on one page with a column beside the steps to a page for
 * every half of a way. None leaves out a step or a warning, and the drawing is left out only where
 * it would take more than a page more; the printer takes the first in which all steps are large
 * enough.
 */
export function sheetLayouts(sheet: ManualSheet): readonly SheetLayout[] {
  const { groups, drawing } = sheet
  const look = sheet.look.length > 0
  const calls = sheet.calls.length > 0
  const whole = { head: true, look, groups, done: true, stop: true }
  // Where somebody is called, the first page is for that: it has no drawing, and when to stop stands
  // beside all steps.
  const head = { ...whole, side: false, drawn: undefined, groups: [], done: false, stop: !calls }
  /** Without anything to decide the first steps stand below the head. */
  const afterHead = (work: readonly SheetPage[]): readonly SheetPage[] => {
    if (look || calls) return [head, ...work]
    const [first, ...others] = work
    return first ? [{ ...first, head: true }, ...others] : []
  }
  const parted = (pages: readonly (readonly SheetGroup[])[]): readonly SheetLayout[] => {
    const work = stepPages(pages)
    const name = pages.map(steps).join('+')
    const atHead = calls ? [] : (['across', 'foot'] as const)
    const onPage = (at: number): readonly SheetLayout[] =>
      drawnAs.map((drawn) => ({
        name: `${name} page ${at + 1} ${drawn}`,
        pages: afterHead(withDrawing(work, at, drawn)),
      }))
    const own = citing(work, drawing)
    const drawings = [
      ...onPage(own),
      ...atHead.map((drawn) => ({
        name: `${name} head ${drawn}`,
        pages: [{ ...head, drawn }, ...work],
      })),
      // Where it has no room by its step, on the last page rather than nowhere.
      ...(own === work.length - 1 ? [] : onPage(work.length - 1)),
    ]
    return [...(drawing === undefined ? [] : drawings), { name, pages: afterHead(work) }]
  }
  const apart = byWay(groups)
  const half = apart.flatMap((page) => (steps(page) > 5 ? halfPages(page) : [page]))
  const layouts = [
    ...onOnePage(whole, drawing !== undefined),
    ...[[groups], ...mostSteps.map((most) => packed(apart, most)), apart, half].flatMap(parted),
  ]
  const seen = new Set<string>()
  return layouts
    .filter(({ pages }) => {
      const key = JSON.stringify(pages)
      return seen.has(key) ? false : seen.add(key)
    })
    .sort((a, b) => pagesAsCounted(a, drawing) - pagesAsCounted(b, drawing))
}
