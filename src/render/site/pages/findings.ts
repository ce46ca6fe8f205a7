import { findingsView } from '../../views/findings-view.ts'
import type { SitePage } from '../page.ts'

export const findings: SitePage = {
  id: 'findings',
  words: ['menu', 'link', 'about'],
  data: ({ manual, pen }) => ({ findings: findingsView(manual, pen) }),
}
