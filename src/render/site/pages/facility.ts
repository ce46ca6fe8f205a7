import { drawingFigure } from '../../drawings/drawing-figure.ts'
import { html } from '../../text/html.ts'
import { facilityView } from '../../views/facility-view.ts'
import type { SitePage } from '../page.ts'

export const facility: SitePage = {
  id: 'facility',
  words: ['menu', 'link', 'about'],
  data: ({ manual, pen, drawings }) => {
    const { plan, sections } = drawings
    const at = facilityView(manual, pen)
    return {
      at,
      jumps: at.groups.map(({ id, title }) => ({ id, title })),
      plan: plan ? drawingFigure(plan, 'screen') : html(''),
      sections: sections ? drawingFigure(sections, 'screen') : html(''),
    }
  },
}
