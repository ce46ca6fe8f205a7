import { isClose } from '../../../model/day.ts'
import type { ManualProcedure } from '../../../model/manual/procedure.ts'
import { figureView } from '../../views/figure-view.ts'
import type { Pen } from '../../views/pen.ts'
import type { SiteContext } from '../page.ts'
import { offeredPapers } from '../papers.ts'
import { dueView } from './due.ts'

/** A task with the first number of its posted sheet: often the number alone is wanted. */
function task(p: ManualProcedure, pen: Pen) {
  const first = p.sheet.figures.find(({ name }) => pen.manual.quantities[name]?.ok)
  return {
    id: p.id,
    title: p.title,
    figure: first && { ...figureView(first.name, pen), label: pen.plain(first.label) },
  }
}

/** Everyday tasks by section. */
const tasks = ({ manual, pen }: SiteContext) =>
  manual.sections
    .filter((s) => s.front)
    .map((s) => ({
      title: s.title,
      tasks: manual.procedures.filter((p) => p.section === s.id).map((p) => task(p, pen)),
    }))

/**
 * Where the first race is close, the plan for the last days goes before all else: on the day of the
 * manual, and with a script on the day on which it is read.
 */
function lastDays({ manual, words }: SiteContext) {
  const plan = manual.schedules.find((s) => s.id === 'ten-days')
  const race = manual.raceDays.map((d) => d.date).sort()[0]
  if (!plan || race === undefined) return []
  const closed = !isClose(race, manual.date)
  return [{ id: `plans/${plan.id}`, link: plan.title, about: words.site.lastDays, race, closed }]
}

/** The first page: what people come for, what is due, everyday tasks, and all else. */
export const home = {
  path: 'index.html',
  template: 'site/index',
  data: (site: SiteContext) => {
    return {
      doors: [...lastDays(site), ...site.doors],
      due: dueView(site),
      groups: tasks(site),
      offered: site.offered,
      papers: offeredPapers(site.printed, site.words),
    }
  },
} as const
