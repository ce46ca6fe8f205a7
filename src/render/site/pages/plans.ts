import { calendarPath } from '../../calendars/calendar-file.ts'
import { dataTables, tablePath, workbookPath } from '../../tables/tables.ts'
import { schedulesView } from '../../views/schedules-view.ts'
import type { Jump, PageFamily, SiteContext, SitePage } from '../page.ts'

/** A file by what it is, and by the ending that tells which program opens it. */
const taken = (file: string, title: string, about?: string) => ({
  file,
  title,
  about,
  ending: file.slice(file.lastIndexOf('.')),
})

/** Files that people take into other programs. */
const takenAlong = ({ manual, words }: SiteContext) => ({
  calendars: manual.calendars.map((c) => taken(calendarPath(c), c.title, c.about)),
  tables: [
    taken(workbookPath, words.tables.workbook),
    ...dataTables(manual, words).map((table) => taken(tablePath(table), table.title)),
  ],
})

export const plans: SitePage = {
  id: 'plans',
  words: ['menu', 'link', 'about'],
  door: true,
  data: (site) => ({ plans: site.manual.schedules, ...(site.beside() && takenAlong(site)) }),
}

/** Two or three places are found without a list. */
const jumpsOf = (places: readonly Jump[]): readonly Jump[] => (places.length > 3 ? places : [])

export const eachPlan: PageFamily = {
  folder: 'plans',
  template: 'plan',
  under: 'plans',
  list: ({ manual, words, pen, drawings }) => {
    let views: ReturnType<typeof schedulesView> | undefined
    const viewOf = (i: number) => {
      views ??= schedulesView(manual, pen, drawings, 'screen')
      return views[i]
    }
    return manual.schedules.map((plan, i) => ({
      id: plan.id,
      title: plan.title,
      called: `${words.pages['plans']?.title ?? ''}: ${plan.title}`,
      data: () => ({
        plan: viewOf(i),
        jumps: jumpsOf(plan.tables.map((t) => ({ id: t.id, title: pen.line(t.title) }))),
      }),
    }))
  },
}
