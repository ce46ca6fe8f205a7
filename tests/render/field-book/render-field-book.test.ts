import { describe, expect, it } from 'vitest'
import { partBlocks } from '../../../src/render/field-book/part-blocks.ts'
import { bookletSetter, renderFieldBook } from '../../../src/render/field-book/render-field-book.ts'
import { assetsFor, demoManual, demos } from '../../support/demo.ts'
import { bareFacility, manualOf, smallManual } from '../../support/small.ts'
import { visibleText } from '../../support/visible-text.ts'

describe.each(demos)('the field book of %s', (id) => {
  it('has something to show in every part of every page', async () => {
    const { manual, words } = await demoManual(id)
    const setter = { ...bookletSetter(manual.fieldBook, manual, words), title: '', named: true }
    expect(manual.fieldBook.pages.length).toBeGreaterThan(18)
    const empty = manual.fieldBook.pages.flatMap((page) =>
      page.parts
        .filter((part) => partBlocks(part, setter).length === 0)
        .map((part) => `${page.id}: ${part.kind}`),
    )
    expect(empty).toEqual([])
  })

  it('says on every page where the rest stands in the binder', async () => {
    const { manual, words } = await demoManual(id)
    const { body } = renderFieldBook(manual, await assetsFor(words, 'linked'))
    const rests = [...body.matchAll(/<small>([^<]*)<\/small>/g)].map((m) => m[1])
    expect(rests).toHaveLength(manual.fieldBook.pages.length)
    for (const rest of rests) expect(rest).toMatch(/^binder( \d|, front)/)
  })

  it('leads to its own pages where a procedure is in it, and to the binder where it is not', async () => {
    const { manual, words } = await demoManual(id)
    const { placeOf } = bookletSetter(manual.fieldBook, manual, words)
    expect(placeOf('harrow').toString()).toContain('data-page="page-harrow"')
    const hard = manual.procedures.find((p) => p.id === 'hard')
    expect(placeOf('hard').toString()).toBe(`binder ${hard?.number}`)
    expect(placeOf('accident', 'horse').toString()).toContain('data-page="page-stop"')
    expect(placeOf('accident', 'person').toString()).toContain('data-page="page-person-hurt"')
  })
})

describe('a page of the field book', () => {
  it('holds what is taken for it, and leaves out what is not there', async () => {
    const { manual, words } = await smallManual()
    const { body } = renderFieldBook(manual, await assetsFor(words, 'linked'))
    const page = body.split('<section ').find((p) => p.includes('id="page-harrow"')) ?? ''
    const text = visibleText(page).join('\n')
    const harrow = manual.procedures.find((p) => p.id === 'harrow')
    for (const group of harrow?.sheet.groups ?? []) expect(text).toContain(group.title ?? '')
    expect(text).toContain(words.sheet.stopAndCall)
    const bare = await manualOf(bareFacility)
    const kinds = bare.manual.fieldBook.pages.map((p) => p.id)
    expect(kinds).toContain('emergency')
    expect(kinds).toContain('days')
  })

  it('does not repeat at a step the warnings that have a page of their own', async () => {
    const { manual } = await demoManual('larkmoor')
    const common = new Set(manual.fieldBook.common)
    expect(common.has('rollover')).toBe(true)
    const { words } = await demoManual('larkmoor')
    const { body } = renderFieldBook(manual, await assetsFor(words, 'linked'))
    const rollover = manual.cautions.find((c) => c.id === 'rollover')
    const avoid = (rollover?.avoid ?? '').slice(0, 40)
    expect(body.split(avoid)).toHaveLength(2)
    expect(body).toContain('data-page="page-before"')
  })
})
