import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Manual } from '../../../../src/model/manual.ts'
import { renderDrawings } from '../../../../src/render/drawings/drawings.ts'
import { planParts } from '../../../../src/render/drawings/oval/plan.ts'
import { zoneNames, zones } from '../../../../src/render/drawings/oval/zones.ts'
import { smallManual } from '../../../support/small.ts'
import { contextOf, labelFaults } from '../../support/plan-labels.ts'

describe('plan of the oval', () => {
  it.each(['page', 'column', 'side'] as const)(
    'has no label on another or outside: %s',
    async (which) => {
      const { manual, words } = await smallManual()
      expect(labelFaults(contextOf(manual, words), which)).toEqual([])
    },
  )

  it('names its zones with the stations where they begin and end', async () => {
    const { manual, words } = await smallManual()
    const svg = planParts(contextOf(manual, words), 'page').drawn
    for (const name of zoneNames) expect(svg).toContain(words.labels['plan']?.[name])
    const ends = zones(manual.geometry)
    expect(ends[0]?.from).toBe(0)
    expect(ends[3]?.to).toBeCloseTo(manual.geometry.railLength, 6)
    for (const [i, z] of ends.slice(1).entries()) expect(z.from).toBe(ends[i]?.to)
    expect((ends[1]?.to ?? 0) - (ends[1]?.from ?? 0)).toBeCloseTo(
      Math.PI * manual.geometry.radius,
      6,
    )
  })
})

describe('plan of any oval', () => {
  it('keeps its labels apart, however long and wide the oval is and wherever its gates are', async () => {
    const { manual, words } = await smallManual()
    const oval = fc.record({
      straight: fc.integer({ min: 120, max: 320 }),
      radius: fc.integer({ min: 60, max: 140 }),
      width: fc.integer({ min: 12, max: 26 }),
      clockwise: fc.boolean(),
      shift: fc.integer({ min: 0, max: 99 }),
    })
    fc.assert(
      fc.property(oval, ({ straight, radius, width, clockwise, shift }) => {
        const railLength = 2 * straight + 2 * Math.PI * radius
        const turned = manual.geometry.marks.map((m) => ({
          ...m,
          station: (m.station / manual.geometry.railLength + shift / 100) * railLength,
          offset: m.offset === 0 ? 0 : width,
        }))
        const geometry: Manual['geometry'] = {
          ...manual.geometry,
          straight,
          radius,
          railLength,
          widthStraights: width,
          widthTurns: width,
          direction: clockwise ? 'clockwise' : 'counterclockwise',
          marks: turned,
        }
        expect(labelFaults(contextOf({ ...manual, geometry }, words), 'page')).toEqual([])
      }),
      { numRuns: 60 },
    )
  })

  it('points to north as a compass laid on it would', async () => {
    const { manual, words } = await smallManual()
    const arrowOf = (
      homeBearing: number | undefined,
      direction: 'clockwise' | 'counterclockwise',
    ): readonly number[] | undefined => {
      const svg = planParts(
        contextOf({ ...manual, geometry: { ...manual.geometry, homeBearing, direction } }, words),
        'page',
      ).drawn
      // The arrow stands just before its letter.
      const found =
        /<path d="M([\d.-]+) ([\d.-]+)L([\d.-]+) ([\d.-]+)"[^>]*\/><path d="[^"]*Z"[^>]*\/><text[^>]*>N<\/text>/.exec(
          svg,
        )
      return found
        ? [Number(found[3]) - Number(found[1]), Number(found[4]) - Number(found[2])].map((d) =>
            Math.sign(Math.round(d)),
          )
        : undefined
    }
    // Horses run to the right and to the east: north is up. They run to the left and to the north:
    // north is at the left.
    expect(arrowOf(90, 'counterclockwise')).toEqual([0, -1])
    expect(arrowOf(0, 'counterclockwise')).toEqual([1, 0])
    expect(arrowOf(180, 'counterclockwise')).toEqual([-1, 0])
    expect(arrowOf(0, 'clockwise')).toEqual([-1, 0])
    expect(arrowOf(undefined, 'counterclockwise')).toBeUndefined()
  })

  it('leads loads from a stockpile to the gate that the file names, else to the nearest', async () => {
    const { manual, words } = await smallManual()
    const marks = (gate: string | undefined): Manual['geometry']['marks'] => [
      { kind: 'stockpile', name: 'Pile', station: 400, offset: 20, gate },
      { kind: 'gate', name: 'Near', station: 430, offset: 20, gate: undefined },
      { kind: 'gate', name: 'Far', station: 520, offset: 20, gate: undefined },
    ]
    const length = (gate: string | undefined): number => {
      const svg = planParts(
        contextOf({ ...manual, geometry: { ...manual.geometry, marks: marks(gate) } }, words),
        'page',
      ).drawn
      const points = [
        ...(/<path d="([^"]*)"[^>]*class="haul"/.exec(svg)?.[1] ?? '').matchAll(
          /[ML]([\d.-]+) ([\d.-]+)/g,
        ),
      ].map((m) => [Number(m[1]), Number(m[2])] as const)
      return points
        .slice(1)
        .reduce(
          (sum, [x, y], i) =>
            sum + Math.hypot(x - (points[i]?.[0] ?? 0), y - (points[i]?.[1] ?? 0)),
          0,
        )
    }
    expect(length(undefined)).toBeCloseTo(length('Near'), 6)
    expect(length('Far')).toBeGreaterThan(2 * length('Near'))
  })

  it('shows the way of loads only where there is a stockpile and a gate outside', async () => {
    const { manual, words } = await smallManual()
    const routes = (marks: Manual['geometry']['marks']): number =>
      (
        renderDrawings({ ...manual, geometry: { ...manual.geometry, marks } }, words)
          ['plan']?.at('page')
          .match(/class="haul"/g) ?? []
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
