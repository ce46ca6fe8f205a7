import { describe, expect, it } from 'vitest'
import { rankUnmeasured } from '../../src/compute/sensitivity.ts'
import { demos, loadDemo } from '../support/demo.ts'

describe.each(demos)('rank of what nobody has measured at %s', (id) => {
  it('goes from the most telling value down, and holds only values that nobody has measured', async () => {
    const { computed } = await loadDemo(id)
    if (!computed) throw new Error('faults')
    const ranked = rankUnmeasured(computed.engine)
    expect(ranked.length).toBeGreaterThan(3)
    expect(ranked.every((s) => s.fact.provenance.kind === 'typical')).toBe(true)
    expect(ranked.map((s) => s.movement)).toEqual(
      [...ranked.map((s) => s.movement)].sort((a, b) => b - a),
    )
  })
  it('moves a sound by a tenth of the sound, not of the decibels', async () => {
    const { computed } = await loadDemo(id)
    const noise =
      computed && rankUnmeasured(computed.engine).find((s) => s.fact.path === 'practice.noise')
    // A tenth more sound shortens the time that NIOSH recommends by a tenth, because 3 dB are twice
    // the sound.
    expect(noise?.most?.share).toBeCloseTo(0.11, 1)
  })
  it('says truly how far the most moved figure moves', async () => {
    const { computed } = await loadDemo(id)
    const engine = computed?.engine
    const first = engine && rankUnmeasured(engine)[0]
    const most = first?.most
    if (!engine || !most) throw new Error('faults')
    const si = (e: typeof engine): number => e.si(most.figure) ?? Number.NaN
    const moved = [1.1, 0.9]
      .map((f) =>
        Math.abs(si(engine.vary(new Map([[first.fact.path, first.fact.si * f]]))) / si(engine) - 1),
      )
      .filter((x) => !Number.isNaN(x))
    expect(Math.max(...moved)).toBeCloseTo(most.share, 12)
  })
})
