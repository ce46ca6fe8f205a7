import { describe, expect, it } from 'vitest'
import type { Manual } from '../../src/model/manual.ts'
import { renderDrawings } from '../../src/render/drawings/drawings.ts'
import { demoManual, demos } from '../support/demo.ts'

const charts = [
  'water-months',
  'heat-index',
  'race-interval',
  'drying',
  'passes-grade',
  'passes-harrow',
  'passes-screen',
  'passes-drum',
  'passes-condition',
  'passes-water',
]

/** Attributes of all boxes of one class. */
const boxes = (
  svg: string,
  name: string,
): { x: number; y: number; width: number; height: number }[] =>
  [...svg.matchAll(/<rect ([^>]*)>/g)]
    .map((m) => m[1] ?? '')
    .filter((a) => new RegExp(`class="${name}"`).test(a))
    .map((a) => {
      const value = (key: string): number => Number(new RegExp(`\\b${key}="([^"]+)"`).exec(a)?.[1])
      return { x: value('x'), y: value('y'), width: value('width'), height: value('height') }
    })

/**
 * Room that a text takes at the most, judged by its letters: no letter of the face in use is wider
 * on average.
 */
function textBoxes(
  svg: string,
): { words: string; left: number; right: number; top: number; bottom: number }[] {
  return [
    ...svg.matchAll(
      /<text x="([^"]+)" y="([^"]+)" text-anchor="(\w+)" font-size="([^"]+)"[^>]*>([^<]*)<\/text>/g,
    ),
  ].map((m) => {
    const [x, y, size] = [Number(m[1]), Number(m[2]), Number(m[4])]
    const words = m[5] ?? ''
    const wide = words.length * size * 0.5
    const left = m[3] === 'start' ? x : m[3] === 'end' ? x - wide : x - wide / 2
    return { words, left, right: left + wide, top: y - size, bottom: y + size * 0.25 }
  })
}

describe.each(demos)('charts of %s', (id) => {
  it('keep every text inside the view box', async () => {
    const { manual, words } = await demoManual(id)
    const drawings = renderDrawings(manual, words)
    for (const name of charts.filter((c) => c in drawings)) {
      const svg = drawings[name]?.svg ?? ''
      const [width, height] = (/viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [])
        .slice(1)
        .map(Number)
      for (const t of textBoxes(svg)) {
        expect(t.left, `${name}: ${t.words}`).toBeGreaterThanOrEqual(0)
        expect(t.right, `${name}: ${t.words}`).toBeLessThanOrEqual(width ?? 0)
        expect(t.top, `${name}: ${t.words}`).toBeGreaterThanOrEqual(0)
        expect(t.bottom, `${name}: ${t.words}`).toBeLessThanOrEqual(height ?? 0)
      }
    }
  })
  it('say their numbers in the text alternative', async () => {
    const { manual, words } = await demoManual(id)
    const drawings = renderDrawings(manual, words)
    for (const name of charts.filter((c) => c in drawings)) {
      expect(drawings[name]?.alt.length, name).toBeGreaterThan(
        drawings[name]?.caption.length ?? Infinity,
      )
      expect(drawings[name]?.alt, name).toMatch(/\d/)
      expect(drawings[name]?.svg, name).toMatch(/^<svg [^>]*role="img" aria-label="[^"]*\d/)
    }
  })
  it('show as many strips as the figure says, within the track', async () => {
    const { manual, words } = await demoManual(id)
    const drawings = renderDrawings(manual, words)
    expect(Object.keys(manual.charts.passes)).not.toHaveLength(0)
    for (const [figure, pattern] of Object.entries(manual.charts.passes)) {
      const strips = boxes(
        drawings[`passes-${figure === 'spray' ? 'water' : figure}`]?.svg ?? '',
        'strip',
      )
      const expected = manual.figures.find((f) => f.id === `${figure}.strips`)?.value
      expect(expected?.ok && expected.si).toBe(strips.length)
      const across =
        Math.max(...strips.map((s) => s.y + s.height)) - Math.min(...strips.map((s) => s.y))
      expect((strips[0]?.height ?? 0) / across).toBeCloseTo(pattern.covers / pattern.across, 2)
    }
  })
})

describe('the plan', () => {
  it('shows the way of loads only where there is a stockpile and a gate outside', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const routes = (marks: Manual['geometry']['marks']): number =>
      (
        renderDrawings({ ...manual, geometry: { ...manual.geometry, marks } }, words)[
          'plan'
        ]?.svg.match(/class="haul"/g) ?? []
      ).length
    const pile = {
      kind: 'stockpile' as const,
      name: 'Pile',
      station: 400,
      offset: 20,
      gate: undefined,
    }
    const gate = { kind: 'gate' as const, name: 'Gate', station: 300, offset: 20, gate: undefined }
    expect(routes([pile, gate])).toBe(1)
    expect(routes([pile, { ...gate, offset: 0 }])).toBe(0)
    expect(routes([gate])).toBe(0)
  })
})

describe('a chart', () => {
  it('draws columns as high as the water of their months', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const months = manual.charts.waterMonths ?? []
    const columns = boxes(renderDrawings(manual, words)['water-months']?.svg ?? '', 'column')
    expect(columns).toHaveLength(months.length)
    const most = Math.max(...months.map((m) => m.water))
    const highest = Math.max(...columns.map((c) => c.height))
    for (const [i, m] of months.entries())
      expect((columns[i]?.height ?? 0) / highest).toBeCloseTo(m.water / most, 3)
    expect(months.filter((m) => m.own)).toHaveLength(1)
  })
  it('draws the bar of the harrow as long as its laps take', async () => {
    const { manual, words } = await demoManual('ostmere')
    const at = manual.charts.interval
    const svg = renderDrawings(manual, words)['race-interval']?.svg ?? ''
    const [before] = boxes(svg, 'horses')
    const [harrow] = boxes(svg, 'harrow')
    expect((harrow?.width ?? 0) / (before?.width ?? 1)).toBeCloseTo(
      ((at?.harrowed ?? 0) - (at?.clear ?? 0)) / (at?.clear ?? 1),
      2,
    )
    expect(svg.match(/class="lap"/g) ?? []).toHaveLength((at?.laps ?? 0) - 1)
  })
  it('shows the truck behind the harrow where laps of water fit', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const water = { figure: 'gap.water-laps', laps: 2, from: 540, to: 1100, instead: false }
    const interval = {
      interval: 1800,
      clear: 300,
      lap: 240,
      laps: 4,
      harrowed: 1260,
      open: 1500,
      water,
    }
    const with2 =
      renderDrawings({ ...manual, charts: { ...manual.charts, interval } }, words)['race-interval']
        ?.svg ?? ''
    expect(boxes(with2, 'water')[0]?.x).toBeGreaterThan(boxes(with2, 'harrow')[0]?.x ?? Infinity)
    const without =
      renderDrawings(
        { ...manual, charts: { ...manual.charts, interval: { ...interval, water: undefined } } },
        words,
      )['race-interval']?.svg ?? ''
    expect(boxes(without, 'water')).toHaveLength(0)
  })
  it('shows the truck in place of the harrow where no lap of water fits behind it', async () => {
    const { manual, words } = await demoManual('larkmoor')
    expect(manual.charts.interval?.water).toMatchObject({
      figure: 'gap.water-alone',
      instead: true,
    })
    const svg = renderDrawings(manual, words)['race-interval']?.svg ?? ''
    expect(boxes(svg, 'water')[0]?.x).toBe(boxes(svg, 'harrow')[0]?.x)
  })
  it('sorts every field of felt temperature into its level, never lower where it is hotter or moister', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const rows = manual.charts.heat?.rows ?? []
    const svg = renderDrawings(manual, words)['heat-index']?.svg ?? ''
    for (const level of [1, 2, 3, 4])
      expect(boxes(svg, `level-${level}`), String(level)).toHaveLength(
        rows.flatMap((r) => r.cells).filter((c) => c.level === level).length + 1,
      )
    for (const [j, row] of rows.entries())
      for (const [i, c] of row.cells.entries()) {
        expect(c.level).toBeGreaterThanOrEqual(row.cells[i - 1]?.level ?? 1)
        expect(c.level).toBeGreaterThanOrEqual(rows[j - 1]?.cells[i]?.level ?? 1)
      }
  })
  it('lets the cushion dry through the moisture wanted to dust on the days of the worksheet', async () => {
    const { manual } = await demoManual('larkmoor')
    const curve = manual.charts.drying
    const moistureAt = (time: number): number => {
      const after = curve?.points.findIndex((p) => p.time >= time) ?? -1
      const [a, b] = [curve?.points[after - 1], curve?.points[after]]
      return a && b
        ? a.moisture + ((b.moisture - a.moisture) * (time - a.time)) / (b.time - a.time)
        : Number.NaN
    }
    expect(moistureAt(curve?.workable ?? 0)).toBeCloseTo(curve?.target ?? 0, 3)
    expect(moistureAt(curve?.dust ?? 0)).toBeCloseTo(curve?.dusty ?? 0, 3)
    expect(curve?.points[0]?.moisture).toBe(curve?.held)
  })
  it('is left out where its inputs are missing', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const none: Manual['charts'] = {
      waterMonths: undefined,
      heat: undefined,
      interval: undefined,
      drying: undefined,
      countdown: undefined,
      levels: [],
      passes: {},
    }
    const drawings = renderDrawings({ ...manual, charts: none }, words)
    for (const name of charts) expect(Object.keys(drawings)).not.toContain(name)
    const poor = (await demoManual('brambleford')).manual.charts
    expect([poor.waterMonths, poor.heat, poor.drying]).toEqual([undefined, undefined, undefined])
  })
})
