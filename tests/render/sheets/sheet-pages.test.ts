import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ManualSheet, SheetGroup } from '../../../src/model/manual/procedure.ts'
import { sheetLayouts } from '../../../src/render/sheets/sheet-pages.ts'

const group = (steps: number, letter?: string): SheetGroup => ({
  letter,
  method: letter,
  title: letter,
  steps: Array.from({ length: steps }, (_, i) => ({
    number: i + 1,
    do: `${letter} ${i}`,
    note: undefined,
    cautions: [],
    figures: [],
    drawing: undefined,
  })),
})

const sheet = (groups: readonly SheetGroup[], more: Partial<ManualSheet> = {}): ManualSheet => ({
  when: 'Daily.',
  figures: [],
  calls: [],
  look: [{ found: 'Dry.', do: 'Water.', letter: 'A', procedure: undefined }],
  groups,
  drawing: undefined,
  done: [],
  stop: [],
  reckoner: undefined,
  worksheets: [],
  ...more,
})

const sheets = fc
  .tuple(
    fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 4 }),
    fc.boolean(),
    fc.boolean(),
  )
  .map(([counts, common, look]) =>
    sheet(
      [
        ...(common ? [group(2)] : []),
        ...counts.map((n, i) => group(n, String.fromCharCode(65 + i))),
      ],
      look ? {} : { look: [] },
    ),
  )

describe('a posted sheet on pages', () => {
  it('leaves out no step, whatever its layout, and keeps the order of each way', () => {
    const doneIn = (groups: readonly SheetGroup[]): readonly string[] =>
      groups.flatMap((g) => g.steps.map((step) => step.do))
    fc.assert(
      fc.property(sheets, (s) => {
        for (const { pages } of sheetLayouts(s)) {
          // What all ways begin with may stand on several pages.
          const shown = doneIn(pages.flatMap((p) => p.groups))
          expect([...new Set(shown)]).toEqual(doneIn(s.groups))
        }
      }),
    )
  })

  it('has its warnings on the first page, and what was found before any step', () => {
    fc.assert(
      fc.property(sheets, (s) => {
        for (const { pages } of sheetLayouts(s)) {
          expect(pages.map((p) => p.head)).toEqual(pages.map((_, i) => i === 0))
          expect(pages.some((p) => p.look)).toBe(s.look.length > 0)
          expect(pages.slice(1).some((p) => p.look)).toBe(false)
        }
      }),
    )
  })

  it('says on every page with steps when to stop, and on the last when it is done', () => {
    fc.assert(
      fc.property(sheets, (s) => {
        for (const { pages } of sheetLayouts(s)) {
          expect(pages.filter((p) => p.groups.length > 0).every((p) => p.stop)).toBe(true)
          expect(pages.map((p) => p.done)).toEqual(pages.map((_, i) => i === pages.length - 1))
        }
      }),
    )
  })

  /** A sheet of two ways, the second of which cites the drawing. */
  const drawn = (more: Partial<ManualSheet> = {}): ManualSheet => {
    const cited = group(8, 'B')
    const steps = cited.steps.map((s, i) => (i === 3 ? { ...s, drawing: 'ridge' } : s))
    return sheet([group(9, 'A'), { ...cited, steps }, group(7, 'C')], { drawing: 'ridge', ...more })
  }
  const places = (s: ManualSheet, pages: number) =>
    sheetLayouts(s)
      .filter((l) => l.pages.length === pages)
      .map((l) => l.pages.map((p) => p.drawn ?? ''))

  it('has its drawing by the steps that cite it, where it is decided, or on its last page', () => {
    expect(places(drawn(), 4)).toEqual([
      ['', '', 'across', ''],
      ['', '', 'beside', ''],
      ['', '', 'alone', ''],
      ['', '', 'foot', ''],
      ['across', '', '', ''],
      ['foot', '', '', ''],
      ['', '', '', 'across'],
      ['', '', '', 'beside'],
      ['', '', '', 'alone'],
      ['', '', '', 'foot'],
      ['', '', '', ''],
    ])
    expect(places(drawn({ calls: ['fire'] }), 4).some(([first]) => first !== '')).toBe(false)
  })

  it('takes a page more rather than none of its drawing, but not two', () => {
    const layouts = sheetLayouts(drawn()).map(({ pages }) => ({
      pages: pages.length,
      isDrawn: pages.some((p) => p.drawn),
    }))
    const at = (pages: number, isDrawn: boolean): number =>
      layouts.findIndex((l) => l.pages === pages && l.isDrawn === isDrawn)
    expect(at(3, true)).toBeLessThan(at(2, false))
    expect(at(2, false)).toBeLessThan(at(4, true))
    expect(layouts.at(-1)?.isDrawn).toBe(false)
  })

  it('lets short ways share a page, and keeps what all begin with beside each', () => {
    const ways = [group(1), group(3, 'A'), group(7, 'B'), group(5, 'C'), group(9, 'D')]
    const letters = sheetLayouts(sheet(ways)).map(({ pages }) =>
      pages.slice(1).map((p) => p.groups.map((g) => g.letter ?? '-').join('')),
    )
    expect(letters).toContainEqual(['-ABC', '-D'])
    expect(letters).toContainEqual(['-AB', '-C', '-D'])
    // Halves of a long way: what all begin with stands before the first alone.
    expect(letters.at(-1)).toEqual(['-A', '-B', 'B', '-C', 'C', '-D', 'D'])
  })

  it('keeps the first page for calls where somebody is called', () => {
    const [first, second] =
      sheetLayouts(sheet([group(9, 'A'), group(8, 'B')], { calls: ['fire'] })).at(-1)?.pages ?? []
    expect([first?.stop, second?.stop]).toEqual([false, true])
  })

  it('parts from one page into ever more, and never the same way twice', () => {
    const counts = sheetLayouts(sheet([group(9, 'A'), group(8, 'B')])).map((l) => l.pages.length)
    expect(counts).toEqual([1, 1, 2, 3, 5])
  })
})
