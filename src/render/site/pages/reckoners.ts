import { reckonerView } from '../../views/reckoner-view.ts'
import type { SitePage } from '../page.ts'

export const reckoners: SitePage = {
  id: 'reckoners',
  words: ['link', 'about'],
  under: 'numbers',
  offersDay: true,
  data: ({ manual, pen }) => ({
    reckoners: manual.reckoners.map((r) => reckonerView(r, pen)),
    jumps: manual.reckoners.map((r) => ({ id: r.id, title: pen.line(r.title) })),
  }),
}
