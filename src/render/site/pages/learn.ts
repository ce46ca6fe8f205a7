import { trainingView } from '../../views/training-view.ts'
import type { SitePage } from '../page.ts'

export const learn: SitePage = {
  id: 'learn',
  words: ['menu', 'link', 'about'],
  data: ({ manual, pen }) => ({ training: trainingView(manual, pen) }),
}
