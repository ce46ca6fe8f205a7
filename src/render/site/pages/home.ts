import { drawingFigure } from '../../drawings/drawing-figure.ts'
import { fieldBookFiles } from '../../field-book/files.ts'
import { html } from '../../text/html.ts'
import { symptomsView } from '../../views/symptoms-view.ts'
import type { SiteContext } from '../page.ts'
import { sectionsView } from './procedures.ts'

/** The first page: two doors, what is urgent, and all else. It is called as the facility is. */
export const home = {
  path: 'index.html',
  template: 'site/index',
  data: (site: SiteContext) => {
    const sections = sectionsView(site)
    const { plan } = site.drawings
    return {
      urgent: sections.find((s) => s.id === 'emergency')?.procedures ?? [],
      sections,
      symptoms: symptomsView(site.manual, site.pen),
      offered: site.offered,
      // The files bear the names under which they are written.
      books: site.printed && site.manual.fieldBook.pages.length > 0 ? [fieldBookFiles] : [],
      plan: plan ? drawingFigure(plan, 'screen') : html(''),
    }
  },
} as const
