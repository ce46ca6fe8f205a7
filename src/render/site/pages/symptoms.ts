import { symptomsView } from '../../views/symptoms-view.ts'
import type { SitePage } from '../page.ts'

export const symptoms: SitePage = {
  id: 'symptoms',
  words: ['menu', 'about'],
  data: ({ manual, pen }) => ({ symptoms: symptomsView(manual, pen) }),
}
