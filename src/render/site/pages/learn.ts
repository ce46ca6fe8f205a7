import { createDrawingPrinter } from '../../views/drawing-places.ts'
import { trainingView } from '../../views/training-view.ts'
import type { SitePage } from '../page.ts'

export const learn: SitePage = {
  id: 'learn',
  words: ['menu', 'link', 'about'],
  door: true,
  data: ({ manual, pen, drawings }) => ({
    training: trainingView(manual, pen, createDrawingPrinter(drawings, 'screen')),
    jumps: manual.procedures.map(({ id, title }) => ({ id, title })),
  }),
}
