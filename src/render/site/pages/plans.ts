import { plansView } from '../../views/plans-view.ts'
import type { PageFamily, SitePage } from '../page.ts'

export const plans: SitePage = {
  id: 'plans',
  words: ['menu', 'link', 'about'],
  data: ({ manual }) => ({ plans: manual.plans }),
}

export const eachPlan: PageFamily = {
  folder: 'plans',
  template: 'plan',
  under: 'plans',
  list: ({ manual, pen, drawings }) =>
    manual.plans.map((plan, i) => ({
      id: plan.id,
      title: plan.title,
      data: () => ({ plan: plansView(manual, pen, drawings, 'screen')[i], scrolls: true }),
    })),
}
