import { describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { openBook } from '../../../src/render/binder/book.ts'
import { type WorksheetsView, worksheetsView } from '../../../src/render/binder/worksheets.ts'
import { demoManual, demos } from '../../support/demo.ts'

type Block = Extract<WorksheetsView['entries'][number], { titles: unknown }>

async function printed(id: string): Promise<{ manual: Manual; view: WorksheetsView }> {
  const { manual, words } = await demoManual(id)
  return { manual, view: worksheetsView(openBook(manual, words).pen) }
}

const isBlock = (entry: WorksheetsView['entries'][number]): entry is Block => 'titles' in entry

describe.each(demos)('worksheets of %s on paper', (id) => {
  it('are all there, once, each with all of its values and results', async () => {
    const { manual, view } = await printed(id)
    const blocks = view.entries.filter(isBlock)
    const titles = blocks.flatMap((b) => b.titles.map((t) => t.number))
    expect([...titles].sort()).toEqual(manual.worksheets.map((w) => w.number).sort())
    for (const block of blocks) {
      const own = manual.worksheets.filter((w) => block.titles.some((t) => t.id === w.id))
      const [first] = own
      const columns = block.tables.flatMap((t) => t.numbers)
      if (own.length > 1) expect(columns).toEqual(block.titles.map((t) => t.number))
      const rows = block.tables[0]?.rows ?? [...block.inputs, ...block.outputs]
      expect(rows.length + block.shared.length, first?.number).toBe(
        (first?.inputs.length ?? 0) + (first?.outputs.length ?? 0),
      )
    }
  })

  it('say where each worksheet is that does not stand in its place', async () => {
    const { view } = await printed(id)
    const numbers = view.entries.map((e) => (isBlock(e) ? e.titles[0]?.number : e.number) ?? '')
    const order = numbers.map((n) => Number(n.slice(2)))
    expect(order).toEqual([...order].sort((a, b) => a - b))
  })

  it('give every letter in a table its meaning', async () => {
    const { view } = await printed(id)
    for (const block of view.entries.filter(isBlock)) {
      const used = block.tables.flatMap((t) => t.rows.flatMap((r) => r.cells.map((c) => c.from)))
      const letters = new Set(used.filter((from) => from !== ''))
      expect(new Set(block.origins.map((o) => o.letter))).toEqual(letters)
    }
  })

  it('list in front no letter twice', async () => {
    const { view } = await printed(id)
    const symbols = view.shared.map((i) => i.symbol.toString())
    expect(new Set(symbols).size).toBe(symbols.length)
  })
})
