import { drawingsOnPage } from '../../views/drawing-places.ts'
import { procedureView } from '../../views/procedure-view.ts'
import type { PageFamily, SiteContext, SitePage } from '../page.ts'

/** The procedures by section, each with what it is for. */
export const sectionsView = ({ manual, pen }: SiteContext) =>
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
  data: (site) => ({ sections: sectionsView(site) }),
}

export const eachProcedure: PageFamily = {
  folder: 'procedures',
  template: 'procedure',
  under: 'procedures',
  list: ({ manual, pen, drawings }) =>
    manual.procedures.map((p) => ({
      id: p.id,
      title: p.title,
      data: () =>
        procedureView(
          p,
          pen,
          (method) => `#${method}`,
          drawingsOnPage(drawings, manual, pen.words),
        ),
    })),
}
