import { describe, expect, it } from 'vitest'
import { composeGrainCurve } from '../../../src/compose/material/grain-curve.ts'
import { materialClassRows, sievePointRows } from '../../../src/compose/material/material-class.ts'
import { contextFor, halfMile } from '../support/context.ts'

/** A facility with a sieve analysis, with this share of fines. */
const sieved = (more = '', fines = '8 %'): string =>
  halfMile.replace(
    'material: stone-dust',
    `material: stone-dust, sieve: [{ date: 2027-05-04, by: A lab, passing: { No. 4: 100 %, No. 10: 80 %, No. 40: 40 %, No. 100: 16 %, No. 200: ${fines} }${more} }]`,
  )

describe('the class of the material', () => {
  it('is told from its sieves, with the day and whose test it was', async () => {
    const [sample, group, texture] = materialClassRows(await contextFor(sieved()))
    expect(sample).toEqual(['Sample', 'Tue, May 4, 2027, A lab'])
    // ASTM D2487: 5 to 12 % of fines have two symbols; fines that are not plastic are silt. By the
    // sieves D10, D30 and D60 are 0.09, 0.28 and 0.93 mm, so that the curvature is below one.
    expect(group?.[0]).toBe('Soil group')
    expect(group?.[1]).toMatch(/^SP-SM: .+; .+/)
    expect(texture).toEqual(['Texture', 'cannot be told without the share of clay from a lab'])
  })

  it('cannot be told where fines are few and the finest tenth is finer than the last sieve', async () => {
    const [, group] = materialClassRows(await contextFor(sieved('', '11 %')))
    expect(group?.[1]).toBe(
      'cannot be told: with 12 % of fines or less, D10, D30 and D60 must be known',
    )
  })

  it('has a texture and its feel once the clay is known', async () => {
    const rows = materialClassRows(await contextFor(sieved(', clay: 2 %')))
    // 8 % of 80 % is finer than silt's upper end: nine tenths of the fine earth are sand.
    expect(rows.slice(2).map((r) => r[0])).toEqual(['Texture', 'How it feels'])
    expect(rows[2]?.[1]).toBe('sand')
    expect(rows[3]?.[1]).not.toBe('')
  })

  it('is not asked for without a sieve analysis', async () => {
    const context = await contextFor(halfMile)
    expect(materialClassRows(context)).toEqual([])
    expect(sievePointRows(context)).toEqual([])
    expect(composeGrainCurve(context)).toBeUndefined()
  })
})

describe('the grain-size curve', () => {
  it('has a point for each sieve, as the table has a row, and the sizes that it reaches', async () => {
    const context = await contextFor(sieved())
    const curve = composeGrainCurve(context)
    const rows = sievePointRows(context)
    expect(curve?.points.map((p) => p.name)).toEqual(rows.map((r) => r[0]))
    expect(rows.map((r) => r[2])).toEqual(['100 %', '80 %', '40 %', '16 %', '8 %'])
    expect(curve?.sizes.map((s) => [s.name, s.share])).toEqual([
      ['D10', 0.1],
      ['D30', 0.3],
      ['D60', 0.6],
    ])
    expect(curve?.gritText).toBe('1/8 in')
  })
})
