import type { Words } from '../../../validate/schemas/words.ts'
import { drawingsOnPage } from '../../views/drawing-places.ts'
import { type ProcedureView, procedureView } from '../../views/procedure-view.ts'
import type { Jump, PageFamily, SiteContext, SitePage } from '../page.ts'
import { offeredFile, sheetFile } from '../papers.ts'

/** The procedures by section, each with what it is for. */
const sectionsView = ({ manual, pen }: SiteContext) =>
  manual.sections.map((s) => ({
    id: s.id,
    title: s.title,
    about: pen.line(s.about),
    procedures: manual.procedures
      .filter((p) => p.section === s.id)
      .map((p) => ({ id: p.id, title: p.title, purpose: pen.line(p.purpose) })),
  }))

export const procedures: SitePage = {
  id: 'procedures',
  words: ['menu', 'about'],
  door: true,
  data: (site) => ({
    sections: sectionsView(site),
    jumps: site.manual.sections.map(({ id, title }) => ({ id, title })),
  }),
}

/** The ways of working, and what stands before and behind them. */
const jumpsOf = ({ places, methods }: ProcedureView, { procedure }: Words): readonly Jump[] => [
  { id: places.measure, title: procedure.measureFirst },
  ...methods.map(({ id, title }) => ({ id, title })),
  { id: places.checks, title: procedure.rightWhen },
  { id: places.failures, title: procedure.ifNot },
  { id: places.stop, title: procedure.stop },
]

export const eachProcedure: PageFamily = {
  folder: 'procedures',
  template: 'procedure',
  under: 'procedures',
  offersDay: true,
  list: (site) =>
    site.manual.procedures.map((p) => ({
      id: p.id,
      title: p.title,
      data: () => {
        const { manual, pen, drawings, printed, words } = site
        const draw = drawingsOnPage(drawings, manual, words, p)
        const view = procedureView(p, pen, (method) => `#${method}`, draw)
        return {
          ...view,
          sheet: offeredFile(sheetFile(p.id), printed, words),
          jumps: jumpsOf(view, words),
        }
      },
    })),
}
