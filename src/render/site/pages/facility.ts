import { drawingFigure } from '../../drawings/drawing-figure.ts'
import { html } from '../../text/html.ts'
import { facilityView } from '../../views/facility-view.ts'
import type { SitePage } from '../page.ts'

export const facility: SitePage = {
  id: 'facility',
  words: ['menu', 'link', 'about'],
  data: ({ manual, pen, drawings }) => {
    const { plan, sections } = drawings
    return {
      at: facilityView(manual, pen),
      plan: plan ? drawingFigure(plan, 'screen') : html(''),
      sections: sections ? drawingFigure(sections, 'screen') : html(''),
    }
  },
}
