import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { taskLines } from '../../../../src/render/drawings/charts/countdown.ts'
import { renderDrawings } from '../../../../src/render/drawings/drawings.ts'
import { widthOf } from '../../../../src/render/drawings/letters.ts'
import { changedSmallManual, smallManual } from '../../../support/small.ts'

describe('calendar', () => {
  it('shows every day and every task once, race days apart from others', async () => {
    const { manual, words } = await smallManual()
    const drawing = renderDrawings(manual, words)['countdown']
    const [svg, alt] = [drawing?.at('page') ?? '', drawing?.alt ?? '']
    const days = manual.charts.countdown?.weeks.flat() ?? []
    expect(svg.match(/class="day"/g)).toHaveLength(days.filter((d) => !d.isRaceDay).length)
    expect(svg.match(/class="race-day"/g)).toHaveLength(days.filter((d) => d.isRaceDay).length)
    // A cell is a seventh of the page, with a margin on both sides.
    for (const t of days.flatMap((d) => d.tasks)) {
      for (const line of taskLines(t, 463 / 7 - 5)) expect(svg).toContain(`>${line}<`)
      for (const line of taskLines(t, 172 - 8)) expect(drawing?.at('side')).toContain(`>${line}<`)
      expect(alt).toContain(t)
    }
  })

  it('crosses out the days that are over, and no other', async () => {
    const { manual, words } = await changedSmallManual((text) =>
      text.replaceAll('date: 2027-08-0', 'date: 2027-07-0'),
    )
    const drawing = renderDrawings(manual, words)['countdown']
    const [svg, alt] = [drawing?.at('page') ?? '', drawing?.alt ?? '']
    const over = manual.charts.countdown?.weeks.flat().filter((d) => d.isPast) ?? []
    expect(over.length).toBeGreaterThan(0)
    expect(svg.match(/class="past"/g)).toHaveLength(over.length)
    const tasks = over.flatMap((d) => d.tasks.map((t) => `${d.text} (past): ${t}`))
    expect(tasks.length).toBeGreaterThan(0)
    for (const t of tasks) expect(alt).toContain(t)
  })
})

describe('words in a cell', () => {
  it('stay in order and within its width, unless one word alone is longer', () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 40, max: 120 }),
        (list, width) => {
          const lines = taskLines(list.join(' '), width)
          expect(lines.join(' ')).toBe(list.join(' '))
          for (const l of lines) expect(widthOf(l, 8.4) <= width || !l.includes(' ')).toBe(true)
        },
      ),
    )
  })
})
