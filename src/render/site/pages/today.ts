import type { DayResult, Waits } from '../../../model/manual/today.ts'
import { figureView } from '../../views/figure-view.ts'
import type { Pen } from '../../views/pen.ts'
import type { SitePage } from '../page.ts'

/** What a row waits for, as attributes that the script reads, and whether it belongs as printed. */
function rowView(waits: Waits, { manual: { quantities } }: Pen) {
  const is = (name: string): boolean => quantities[name]?.ok === true
  const si = (name: string): number | undefined => quantities[name]?.si
  return {
    waits: JSON.stringify([waits.needs, waits.lacks, waits.above, waits.zero]),
    belongs:
      waits.needs.every(is) &&
      !waits.lacks.some(is) &&
      waits.above.every((name) => (si(name) ?? 0) > 0) &&
      waits.zero.every((name) => si(name) === 0),
  }
}

const resultView = ({ title, figures }: DayResult, pen: Pen) => ({
  title: pen.line(title),
  figures: figures.map((name) => figureView(name, pen)),
})

/** What is worked out anew for a day: numbers, clocks, and the race day by the hour. */
export const today: SitePage = {
  id: 'today',
  words: ['menu', 'link', 'about'],
  door: true,
  data: ({ manual, pen }) => {
    const { groups, results, clocks, list } = manual.today
    return {
      groups: groups.map(({ id, title, facts }, i) => ({ id, title, facts, first: i === 0 })),
      results: results.map((r) => resultView(r, pen)),
      clocks: clocks.map(({ id, title, at, now, about, rows }) => ({
        id,
        title,
        at,
        now,
        about: pen.line(about),
        rows: rows.map((row) => ({
          figure: row.figure,
          before: row.before,
          length: pen.manual.quantities[row.figure]?.text ?? '',
          says: pen.line(row.says),
          ...rowView(row, pen),
        })),
      })),
      list: list && {
        title: list.title,
        plan: list.plan,
        rows: list.rows.map((row) => ({
          at: row.at,
          when: pen.line(row.when),
          says: pen.line(row.says),
          who: pen.line(row.who),
          ...rowView(row, pen),
        })),
      },
    }
  },
}
