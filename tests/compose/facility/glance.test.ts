import { describe, expect, it } from 'vitest'
import { composeGlance } from '../../../src/compose/facility/glance.ts'
import { contextFor, halfMile } from '../support/context.ts'

describe('the facility at a glance', () => {
  it('groups facts as the file does, with where each comes from', async () => {
    const groups = composeGlance(await contextFor(halfMile))
    const oval = groups.find((g) => g.title === 'The oval')?.rows ?? []
    expect(oval.find((r) => r.text === '2,640 ft')?.provenance.kind).toBe('stated')
    expect(oval.filter((r) => r.provenance.kind === 'typical').length).toBeGreaterThan(2)
  })

  it('leaves rules of the trade and machines to pages of their own', async () => {
    const context = await contextFor(
      `${halfMile}equipment: [{ id: h, name: h, can: [harrow], from: own, width: 8 ft }]\n`,
    )
    const shown = new Set(composeGlance(context).flatMap((g) => g.rows.map((r) => r.label)))
    const left = [...context.engine.facts.values()].filter((f) =>
      /^(?:practice|gear)\./.test(f.path),
    )
    expect(left.length).toBeGreaterThan(10)
    expect(left.filter((f) => shown.has(f.label)).map((f) => f.path)).toEqual([])
  })

  it('writes the mean of many readings as a ruler has it, and what somebody has stated whole', async () => {
    const text = `${halfMile}measurements: [{ of: cushion.depth.found, value: 1.5943 in, date: 2027-05-01, by: B. Example }]\n`
    const rows = composeGlance(await contextFor(text)).flatMap((g) => g.rows)
    expect(rows.find((r) => r.provenance.kind === 'measured')?.text).toBe('1 5/8 in')
    expect(rows.find((r) => r.label.startsWith('one lap'))?.text).toBe('2,640 ft')
  })
})
