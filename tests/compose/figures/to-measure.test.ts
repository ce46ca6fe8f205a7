import { describe, expect, it } from 'vitest'
import { composeToMeasure } from '../../../src/compose/figures/to-measure.ts'
import { demoManual } from '../../support/demo.ts'
import { contextFor, halfMile } from '../support/context.ts'

describe('what to measure first', () => {
  it('is what figures hang on and nobody has measured, with the figure that moves most', async () => {
    const rows = composeToMeasure(await contextFor(halfMile))
    const width = rows.find((r) => r.label === 'track width on the turns')
    expect(width).toMatchObject({ text: '65 ft' })
    expect(width?.figures).toBeGreaterThan(0)
    expect(width?.percent).toBeGreaterThan(0)
    expect(width?.most).toMatch(/.+: .+/)
    expect(rows.map((r) => r.label)).not.toContain('length of one straight')
  })

  it('is what a tape, a watch and a bucket can tell, before what takes a laboratory', async () => {
    const { manual } = await demoManual('larkmoor')
    const lab = manual.toMeasure.map((r) => r.of.startsWith('practice.wetting.'))
    expect(lab[0]).toBe(false)
    expect(lab).toContain(true)
    const width = manual.toMeasure.findIndex((r) => !/^(?:practice|cushion)\./.test(r.of))
    expect(width).toBeLessThan(lab.indexOf(true))
  })

  it('is nothing that has been measured', async () => {
    const taped = halfMile.replace(
      '600 ft }',
      '600 ft, width: { straights: 65 ft, turns: 70 ft } }',
    )
    const labels = composeToMeasure(await contextFor(taped)).map((r) => r.label)
    expect(labels.length).toBeGreaterThan(0)
    expect(labels.filter((l) => l.startsWith('track width'))).toEqual([])
  })

  it('says of a machine’s field which work it is for', async () => {
    const rows = composeToMeasure(
      await contextFor(`${halfMile}equipment: [{ id: h, name: h, can: [harrow], from: own }]\n`),
    )
    expect(rows.some((r) => r.label.endsWith(', harrowing'))).toBe(true)
  })
})
