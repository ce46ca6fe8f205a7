import { describe, expect, it } from 'vitest'
import { allUses } from '../../../src/compute/uses/all-uses.ts'
import {
  type FigureId,
  figureIdOf,
  figureIds,
  isFigureId,
  isQuantityId,
  type UseId,
} from '../../../src/compute/uses/ids.ts'
import { sampleReadings } from '../../../src/compute/uses/readings.ts'
import { fact, useIdOf } from '../../../src/compute/uses/use.ts'
import { useTable } from '../../../src/compute/uses/use-table.ts'
import { factPaths } from '../../../src/model/fact-spec.ts'

describe('ids of figures and facts', () => {
  it('are known to the compiler', () => {
    const right: FigureId = 'layer-dry.workable'
    // @ts-expect-error There is no such output.
    const wrongOutput: FigureId = 'layer-dry.workabel'
    // @ts-expect-error There is no such use.
    const wrongUse: FigureId = 'layer-dri.workable'
    // @ts-expect-error There is no such fact.
    const wrongFact = fact('oval.width.turn')
    const use: UseId = useIdOf(right)
    expect([right, use]).toEqual(['layer-dry.workable', 'layer-dry'])
    expect([wrongOutput, wrongUse, wrongFact].length).toBe(3)
  })

  it('tell a name from content that is none', () => {
    expect(isFigureId('layer-dry.workable') && isQuantityId('oval.lap')).toBe(true)
    expect(isFigureId('oval.lap') || isQuantityId('layer-dry.workabel')).toBe(false)
    expect(() => figureIdOf('layer-dry.workabel')).toThrow(/no figure "layer-dry.workabel"/)
  })

  it('never name a figure and a fact alike', () => {
    expect(factPaths.filter((path) => figureIds.has(path))).toEqual([])
  })

  it('belong to a use that some facility has, each with the calculations of the table', () => {
    const without = (...paths: string[]) =>
      new Set<string>(factPaths.filter((p) => !paths.some((start) => p.startsWith(start))))
    const seen = [
      without(),
      without('oval.lap'),
      without('oval.radius'),
      without('prices.material', 'gear', 'climate.sun'),
      without('water.storage', 'prices.budget'),
      without('third-truck'),
      without('second-truck', 'third-truck'),
      // Hours and fuel are worked out where nobody states them.
      new Set<string>(factPaths.filter((p) => !/\.(?:cost|fuel)$/.test(p))),
    ].flatMap((known) =>
      allUses(known, 'us', sampleReadings).map((u) => `${u.id} ${u.calculation.id}`),
    )
    const declared = Object.entries(useTable).flatMap(([id, calculations]) =>
      calculations.map((c) => `${id} ${c.id}`),
    )
    expect([...new Set(seen)].sort()).toEqual([...new Set(declared)].sort())
  })
})
