import type { Worksheet } from '../../../model/figure.ts'
import { figureView } from '../../views/figure-view.ts'
import type { Pen } from '../../views/pen.ts'
import { worksheetView } from '../../views/worksheet-view.ts'
import type { PageFamily, SitePage } from '../page.ts'

const worksheetLine = (w: Worksheet, pen: Pen) => ({
  id: w.id,
  number: w.number,
  title: w.title,
  figures: w.outputs.map((o) => figureView(o.id, pen)),
})

/** Every figure, by subject and by the worksheet that it comes from. */
export const numbers: SitePage = {
  id: 'numbers',
  words: ['menu', 'link', 'about'],
  door: true,
  data: ({ manual, pen, words }) => ({
    subjects: words.subjects
      .map(({ id, title, worksheets }) => ({
        id,
        title,
        worksheets: worksheets.flatMap((use) => {
          const own = manual.worksheets.find((w) => w.id === use)
          return own ? [worksheetLine(own, pen)] : []
        }),
      }))
      .filter(({ worksheets }) => worksheets.length > 0),
  }),
}

export const eachWorksheet: PageFamily = {
  folder: 'worksheets',
  template: 'worksheet',
  under: 'numbers',
  offersDay: true,
  list: ({ manual, pen }) =>
    manual.worksheets.map((w) => ({
      id: w.id,
      title: w.title,
      called: `${w.number} ${w.title}`,
      data: () => worksheetView(w, pen),
    })),
}
