import { describe, expect, it } from 'vitest'
import { openBook } from '../../../src/render/binder/book.ts'
import { contentsOf, frontContents } from '../../../src/render/binder/contents.ts'
import { demoManual } from '../../support/demo.ts'

const { manual, words } = await demoManual('larkmoor')
const book = openBook(manual, words)
const groups = contentsOf(book)

describe('the contents of a binder', () => {
  it('have entries below every numbered part, in the order of the numbers', () => {
    expect(groups.map((g) => g.number)).toEqual(groups.map((_, i) => String(i + 1)))
    for (const g of groups) expect(g.entries.length, String(g.title)).toBeGreaterThan(0)
  })

  it('name every procedure once, in order', () => {
    const places = groups.flatMap((g) => g.entries.map((e) => e.place))
    const procedures = places.filter((p) => p.startsWith('procedure-'))
    expect(procedures).toEqual(manual.procedures.map((p) => `procedure-${p.id}`))
  })

  it('say of worksheets from which to which', () => {
    const lines = groups.find((g) => g.place === 'part-worksheets')?.entries ?? []
    expect(lines[0]?.title).toMatch(/^W-1 to W-\d+$/)
    expect(lines.at(-1)?.title).toMatch(new RegExp(`to ${manual.worksheets.at(-1)?.number}$`))
  })

  it('name no place twice', () => {
    const places = [...frontContents(book), ...groups, ...groups.flatMap((g) => g.entries)].map(
      (e) => e.place,
    )
    expect(new Set(places).size).toBe(places.length)
  })
})
