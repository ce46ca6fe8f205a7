import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ManualForm } from '../../../src/model/manual/form.ts'
import { heights } from '../../../src/render/forms/form-sizes.ts'
import { layOutForm } from '../../../src/render/forms/lay-out-form.ts'

const form = (rows: number, spare: number): ManualForm => ({
  id: 'any',
  title: 'Any',
  about: '',
  who: '',
  moment: '',
  kept: '',
  boxes: [],
  after: [],
  sign: ['Somebody'],
  phone: undefined,
  table: {
    columns: [{ head: 'A', wide: 1, write: 'line', keeps: [] }],
    rows: Array.from({ length: rows }, (_, i) => ({ head: `row ${i}`, write: undefined })),
    spare,
    keeps: undefined,
  },
})

const tall = (row: { readonly head: string }): number =>
  row.head.endsWith('7') ? 14 : heights.hand

describe('laying out a form', () => {
  it('prints every ready row once, in order, and never more than fits', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 120 }),
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 60, max: 250 }),
        (rows, spare, room) => {
          const m = { first: 30, again: 15, head: 8, last: 12, rowHeight: tall }
          const pages = layOutForm(form(rows, spare), room, m)
          expect(pages.flatMap((p) => p.rows.map((r) => r.head)).filter((h) => h !== '')).toEqual(
            Array.from({ length: rows }, (_, i) => `row ${i}`),
          )
          expect(pages.flatMap((p) => p.rows).length).toBeGreaterThanOrEqual(rows + spare)
          for (const [i, p] of pages.entries()) {
            const used =
              (i === 0 ? m.first : m.again) +
              m.head +
              p.rows.reduce((sum, r) => sum + tall(r), 0) +
              (p.last ? m.last : 0)
            expect(used).toBeLessThanOrEqual(room + 1e-9)
            expect([p.first, p.last]).toEqual([i === 0, i === pages.length - 1])
            expect(p.rows.length).toBeGreaterThan(0)
            expect(p.from).toBe(pages.slice(0, i).reduce((sum, q) => sum + q.rows.length, 0))
          }
        },
      ),
      { numRuns: 200 },
    )
  })

  it('begins no further page with blank rows where places to write follow the table', () => {
    const m = { first: 30, again: 15, head: 8, last: 80, rowHeight: tall }
    const after = [{ label: 'Promises', wide: 6, tall: 3, choices: [], keeps: [] }]
    const pages = layOutForm({ ...form(20, 6), after }, 230, m)
    expect(pages.map((p) => [p.rows.length, p.from, p.last])).toEqual([
      [21, 0, false],
      [0, 21, true],
    ])
  })

  it('adds no blank row where what stands ready is all', () => {
    const [page] = layOutForm(form(5, 0), 250, {
      first: 30,
      again: 15,
      head: 8,
      last: 12,
      rowHeight: tall,
    })
    expect(page?.rows).toHaveLength(5)
  })

  it('refuses a form whose head leaves no room for a row', () => {
    expect(() =>
      layOutForm(form(5, 1), 60, { first: 55, again: 15, head: 8, last: 12, rowHeight: tall }),
    ).toThrow('no room')
  })
})
