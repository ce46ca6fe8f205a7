import { createDrawingPrinter } from '../../views/drawing-places.ts'
import { facilityView } from '../../views/facility-view.ts'
import type { SitePage } from '../page.ts'

export const facility: SitePage = {
  id: 'facility',
  words: ['menu', 'link', 'about'],
  data: ({ manual, pen, drawings }) => {
    const print = createDrawingPrinter(drawings, 'screen')
    const at = facilityView(manual, pen)
    return {
      at,
      jumps: at.groups.map(({ id, title }) => ({ id, title })),
      plan: print('plan'),
      sections: print('sections'),
    }
  },
}
