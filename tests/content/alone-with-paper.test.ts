import { describe, expect, it } from 'vitest'
import { renderSheets } from '../../src/render/sheets/render-sheets.ts'
import { assetsFor, demoManual, demos } from '../support/demo.ts'

/** Whoever is alone with one piece of paper. */
describe.each(demos)('at %s, alone with', async (demo) => {
  const { manual, words } = await demoManual(demo)
  const assets = await assetsFor(words, 'inline')
  const card = (id: string) => manual.cards.find((c) => c.id === id)

  it('the card for sealing, all moves are there, or none', () => {
    const moves = ['roll.move', 'roll.next', 'roll.jump']
    const known = moves.filter((name) => manual.quantities[name]?.ok)
    const said = card('sealing')?.figures.map((f) => f.name) ?? []
    expect(said.filter((name) => moves.includes(name))).toEqual(known)
  })

  it('the card of a driver, it says that the track is closed first', () => {
    for (const id of ['harrow', 'water-truck']) {
      const cautions = card(id)?.cautions.map((c) => c.id)
      if (cautions) expect(cautions, id).toContain('track-closed')
    }
  })

  it('a sheet of work on the track, it says so at its head', () => {
    const ids = ['drains', 'dust', 'calibrate-water', 'set-depth']
    for (const p of manual.procedures.filter(({ id }) => ids.includes(id)))
      expect(
        p.cautions.map((c) => c.id),
        p.id,
      ).toContain('track-closed')
  })

  it('a sheet, it says what to bring, save where seconds count', () => {
    const sheets = renderSheets(manual, assets).sheets.map((make) => make())
    for (const p of manual.procedures) {
      const pages = sheets.find((s) => s.id === p.id)?.pages.join('') ?? ''
      const wanted = p.tools.length > 0 && p.sheet.calls.length === 0
      expect(pages.includes('class="bring"'), p.id).toBe(wanted)
    }
  })

  it('the handout, it says where help is wanted and what to press', () => {
    const kinds = manual.handout.pages.flatMap((page) => page.parts)
    expect(kinds.some((part) => part.kind === 'say')).toBe(true)
    expect(
      kinds.some(
        (p) => p.kind === 'procedure' && p.procedure.id === 'accident' && p.show.includes('look'),
      ),
    ).toBe(true)
  })
})
