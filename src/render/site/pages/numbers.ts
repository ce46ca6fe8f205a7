import { figureView } from '../../views/figure-view.ts'
import { worksheetView } from '../../views/worksheet-view.ts'
import type { PageFamily, SitePage } from '../page.ts'

/** Every figure, by the worksheet that it comes from. */
export const numbers: SitePage = {
  id: 'numbers',
  words: ['menu', 'link', 'about'],
  door: true,
  data: ({ manual, pen }) => ({
    jumps: manual.worksheets.map(({ id, number, title }) => ({ id, title: `${number} ${title}` })),
    worksheets: manual.worksheets.map((w) => ({
      id: w.id,
      number: w.number,
      title: w.title,
      figures: w.outputs.map((o) => figureView(o.id, pen)),
    })),
  }),
}

export const eachWorksheet: PageFamily = {
  folder: 'worksheets',
  template: 'worksheet',
  under: 'numbers',
  list: ({ manual, pen }) =>
    manual.worksheets.map((w) => ({
      id: w.id,
      title: w.title,
      called: `${w.number} ${w.title}`,
      data: () => worksheetView(w, pen),
    })),
}
