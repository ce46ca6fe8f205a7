import { describe, expect, it } from 'vitest'
import { datedRows } from '../../../src/compose/schedules/dated-rows.ts'
import type { Finding } from '../../../src/model/manual/finding.ts'
import { contextFor, halfMile } from '../support/context.ts'

const fair = `${halfMile}race-days:
  - { date: 2027-08-06, first-post: "13:00", races: 8 }
  - { date: 2027-08-03, first-post: "13:00", races: 8 }
practice: { order-before: 21 days }
delivery: { lead-time: 10 days }
`

const noSpray: Finding = {
  id: 'no-spray',
  severity: 'note',
  title: '',
  text: '',
  do: '',
  figures: [],
  guesses: [],
  ask: { entry: 'water', role: undefined, isSaid: true },
  where: [],
}

describe('rows with a date', () => {
  it('count back from the first race day, by all facts that they name, or on from the last', async () => {
    const rows = datedRows(
      [
        { after: ['delivery.lead-time'], cells: ['after'] },
        { on: ['practice.order-before', 'delivery.lead-time'], cells: ['order'] },
        { on: ['practice.order-before'], cells: ['there'] },
        { on: ['practice.order-before'], notice: 'practice.locate-notice', cells: ['called'] },
        { cells: ['any day'] },
      ],
      await contextFor(fair),
    )
    expect(rows.map((r) => [r.row.cells[0], r.date])).toEqual([
      ['any day', undefined],
      ['order', '2027-07-03'],
      // Three working days lie between it and Tuesday the 13th, and a weekend.
      ['called', '2027-07-07'],
      ['there', '2027-07-13'],
      ['after', '2027-08-16'],
    ])
  })

  it('stay without one where no race days are given', async () => {
    const [row] = datedRows(
      [{ on: ['practice.order-before'], cells: ['there'] }],
      await contextFor(halfMile),
    )
    expect(row?.date).toBeUndefined()
  })

  it('are left out by what they need, what makes them superfluous, and where they belong', async () => {
    const rows = datedRows(
      [
        { needs: ['prices.budget'], cells: ['needs'] },
        { lacks: ['shape.lap'], cells: ['lacks'] },
        { when: { has: 'grade' }, cells: ['when'] },
        {
          needs: ['shape.lap'],
          lacks: ['prices.budget'],
          when: { lacks: 'grade' },
          cells: ['kept'],
        },
      ],
      await contextFor(fair),
    )
    expect(rows.map((r) => r.row.cells[0])).toEqual(['kept'])
  })

  it('belong to the findings that they name, where one of these holds', async () => {
    const rows = datedRows(
      [
        { finding: ['no-harrow', 'no-spray'], cells: ['one of them'] },
        { finding: ['no-grader'], cells: ['another'] },
        { 'no-finding': ['no-spray'], cells: ['not with it'] },
        { 'no-finding': ['no-grader'], cells: ['without'] },
      ],
      await contextFor(fair, {}, { findings: [noSpray] }),
    )
    expect(rows.map((r) => r.row.cells[0])).toEqual(['one of them', 'without'])
  })
})
