import { describe, expect, it } from 'vitest'
import { demos, loadDemo } from '../../support/demo.ts'

describe.each(demos)('the uses of %s', (id) => {
  it('gives no worksheet number and no name twice', async () => {
    const { computed } = await loadDemo(id)
    const uses = computed?.engine.uses ?? []
    expect(uses.length).toBeGreaterThan(20)
    const numbers = computed?.engine.worksheets().map((w) => w.number) ?? []
    for (const names of [numbers, uses.map((u) => u.id)])
      expect(names.filter((x, i, all) => all.indexOf(x) !== i)).toEqual([])
  })
})
