import { calendarPath } from '../../calendars/calendar-file.ts'
import { dataTables, tablePath, workbookPath } from '../../tables/tables.ts'
import { schedulesView } from '../../views/schedules-view.ts'
import type { Jump, PageFamily, SiteContext, SitePage } from '../page.ts'

/** Files that people take into other programs. */
const takenAlong = ({ manual, words }: SiteContext) => ({
  calendars: manual.calendars.map((c) => ({ ...c, file: calendarPath(c) })),
  workbook: workbookPath,
  tables: dataTables(manual, words).map((table) => ({ ...table, file: tablePath(table) })),
})

export const plans: SitePage = {
  id: 'plans',
  words: ['menu', 'link', 'about'],
  door: true,
  data: (site) => ({ plans: site.manual.schedules, ...(site.beside && takenAlong(site)) }),
}

/** Two or three places are found without a list. */
const jumpsOf = (places: readonly Jump[]): readonly Jump[] => (places.length > 3 ? places : [])

export const eachPlan: PageFamily = {
  folder: 'plans',
  template: 'plan',
  under: 'plans',
  list: ({ manual, words, pen, drawings }) =>
    manual.schedules.map((plan, i) => ({
      id: plan.id,
      title: plan.title,
      called: `${words.pages['plans']?.title ?? ''}: ${plan.title}`,
      data: () => ({
        plan: schedulesView(manual, pen, drawings, 'screen')[i],
        jumps: jumpsOf(plan.tables.map((t) => ({ id: t.id, title: pen.line(t.title) }))),
      }),
    })),
}
