import { describe, expect, it } from 'vitest'
import { composeSources, type SourceItem } from '../../src/compose/sources.ts'
import type { ManualProcedure } from '../../src/model/manual/procedure.ts'
import { contextFor, halfMile } from './support/context.ts'

const standard: SourceItem = {
  id: 'standard',
  title: 'A Standard',
  number: 'S 12',
  author: [{ literal: 'A Body' }],
  issued: { 'date-parts': [[2020, 5]] },
  note: 'Second edition.',
}
const book: SourceItem = {
  id: 'book',
  title: 'A Book',
  author: [{ given: 'A.', family: 'Author' }, { family: 'Other' }],
}
const house: SourceItem = { id: 'house', title: 'From a House', publisher: 'A House' }

/** What is printed of references that a manual of nothing but these citations has. */
async function sources(references: readonly SourceItem[]) {
  const context = await contextFor(halfMile)
  const procedure = { background: [{ text: '', source: 'book' }], references: ['standard'] }
  const caution = {
    id: 'c',
    signal: 'notice',
    hazard: '',
    avoid: '',
    more: undefined,
    machine: false,
  } as const
  return composeSources({
    ...context,
    references,
    parts: {
      ...context.parts,
      procedures: [procedure as unknown as ManualProcedure],
      cautions: [{ ...caution, sources: ['common-practice', 'house'] }],
      worksheets: [],
    },
  })
}

describe('sources', () => {
  it('name body, title, number and year, as far as they are known', async () => {
    expect((await sources([standard, book, house])).map((s) => s.text)).toEqual([
      'A Body, A Standard, S 12, 2020. Second edition.',
      'A. Author, Other, A Book.',
      'A House, From a House.',
    ])
  })

  it('are those that something cites, in the order of the references, short by number or title', async () => {
    const practice = { id: 'common-practice', title: 'Practice' }
    const unread = { id: 'unread', title: 'Unread' }
    expect((await sources([standard, unread, book, practice])).map((s) => [s.id, s.short])).toEqual(
      [
        ['standard', 'S 12'],
        ['book', 'A Book'],
        ['common-practice', '†'],
      ],
    )
  })
})
