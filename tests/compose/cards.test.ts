import { describe, expect, it } from 'vitest'
import { type CardContext, cardRoom, cardsOf } from '../../src/compose/cards.ts'
import type { ManualReckoner } from '../../src/model/manual/reckoner.ts'
import type { Card } from '../../src/validate/schemas/cards.ts'
import { cautionWith, harrowHere } from './support/harrow.ts'

const table = (id: string, cell: string): ManualReckoner => ({
  id,
  title: id,
  about: '',
  rowHead: '',
  columnHeads: ['a'],
  columnsHead: undefined,
  rows: [{ head: '1', cells: [cell], own: false }],
  worksheet: { number: 'W-1', id: 'a' },
  estimate: false,
})

const contact = (role: string, name: string) => ({
  role,
  roleTitle: role,
  name,
  phone: '555-7700',
  note: '',
})

const context = (change: Partial<CardContext> = {}): CardContext => ({
  here: harrowHere('clay'),
  known: () => true,
  caution: cautionWith('warning'),
  reckoner: (id) => table(id, '4'),
  contacts: [],
  ...change,
})

const figures = (count: number): Card['figures'] =>
  Array.from({ length: count }, (_, i) => ({ figure: `a.n${i}`, label: `number ${i}` }))

const card = (change: Partial<Card> = {}): Card => ({
  id: 'one',
  title: 'One',
  for: 'For one',
  figures: figures(3),
  cautions: ['dust'],
  ...change,
})

describe('composing cards', () => {
  it('keeps what applies here and is known, in order, as far as there is room', () => {
    const [whole] = cardsOf(
      [card({ figures: figures(8) })],
      context({ known: (name) => name !== 'a.n1' }),
    )
    expect(whole?.figures.map((f) => f.name)).toEqual([
      'a.n0',
      'a.n2',
      'a.n3',
      'a.n4',
      'a.n5',
      'a.n6',
    ])
    expect(whole?.figures).toHaveLength(cardRoom.figures)
    const [less] = cardsOf(
      [
        card({
          figures: [
            { figure: 'a.b', label: 'with a grader', when: { has: 'grade' } },
            ...figures(2),
          ],
        }),
      ],
      context(),
    )
    expect(less?.figures.map((f) => f.name)).toEqual(['a.n0', 'a.n1'])
  })

  it('leaves out a card of which no quantity is known, and one that does not apply', () => {
    expect(cardsOf([card()], context({ known: () => false }))).toEqual([])
    expect(
      cardsOf(
        [card({ when: { has: 'grade' } }), card({ id: 'two', when: { has: 'harrow' } })],
        context(),
      ).map((c) => c.id),
    ).toEqual(['two'])
  })

  it('takes the first table that has something to say', () => {
    const tables = new Map([
      ['empty', table('empty', '–')],
      ['full', table('full', '4')],
      ['later', table('later', '5')],
    ])
    const [one] = cardsOf(
      [card({ reckoners: ['absent', 'empty', 'full', 'later'] })],
      context({ reckoner: (id) => tables.get(id) }),
    )
    expect(one?.reckoner?.id).toBe('full')
    expect(
      cardsOf([card({ reckoners: ['absent'] })], context({ reckoner: () => undefined }))[0]
        ?.reckoner,
    ).toBeUndefined()
  })

  it('names whom to call in the order of the card, without roles that nobody fills', () => {
    const [one] = cardsOf(
      [card({ phones: ['fire', 'police', 'ambulance'] })],
      context({
        contacts: [contact('ambulance', 'A'), contact('fire', 'F'), contact('quarry', 'Q')],
      }),
    )
    expect(one?.phones.map((p) => p.name)).toEqual(['F', 'A'])
    const many = Array.from({ length: 30 }, (_, i) => contact('fire', `F${i}`))
    expect(
      cardsOf([card({ phones: ['fire'] })], context({ contacts: many }))[0]?.phones,
    ).toHaveLength(cardRoom.phones)
  })
})
