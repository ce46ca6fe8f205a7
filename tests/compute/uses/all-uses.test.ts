import { describe, expect, it } from 'vitest'
import { demos, loadDemo } from '../../support/demo.ts'

describe.each(demos)('the uses of %s', (id) => {
  it('gives no worksheet number and no name twice', async () => {
    const { computed } = await loadDemo(id)
    const uses = computed?.engine.uses ?? []
    expect(uses.length).toBeGreaterThan(20)
    for (const key of ['number', 'id'] as const)
      expect(uses.map((u) => u[key]).filter((x, i, all) => all.indexOf(x) !== i)).toEqual([])
  })
})
