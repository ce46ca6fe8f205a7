import type { SitePage } from '../page.ts'
import { recordViews } from '../records/record-view.ts'

/** Records that a phone keeps; without scripts it leads to the forms on paper. */
export const records: SitePage = {
  id: 'records',
  words: ['link', 'about'],
  under: 'plans',
  data: ({ pen }) => ({ records: recordViews(pen) }),
}
