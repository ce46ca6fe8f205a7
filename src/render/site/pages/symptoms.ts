import { symptomsView } from '../../views/symptoms-view.ts'
import type { SitePage } from '../page.ts'

export const symptoms: SitePage = {
  id: 'symptoms',
  words: ['menu', 'about'],
  door: true,
  data: ({ manual, pen }) => ({
    symptoms: symptomsView(manual, pen),
    jumps: manual.symptoms.map((s) => ({ id: s.id, title: pen.line(s.says) })),
  }),
}
