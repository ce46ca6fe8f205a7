import { schedulesView } from '../../views/schedules-view.ts'
import type { PageFamily, SitePage } from '../page.ts'

export const plans: SitePage = {
  id: 'plans',
  words: ['menu', 'link', 'about'],
  data: ({ manual }) => ({ plans: manual.schedules }),
}

export const eachPlan: PageFamily = {
  folder: 'plans',
  template: 'plan',
  under: 'plans',
  list: ({ manual, pen, drawings }) =>
    manual.schedules.map((plan, i) => ({
      id: plan.id,
      title: plan.title,
      data: () => ({ plan: schedulesView(manual, pen, drawings, 'screen')[i], scrolls: true }),
    })),
}
