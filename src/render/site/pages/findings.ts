import { findingsView } from '../../views/findings-view.ts'
import type { SitePage } from '../page.ts'

export const findings: SitePage = {
  id: 'findings',
  words: ['menu', 'link', 'about'],
  data: ({ manual, pen, words }) => ({
    findings: findingsView(manual, pen),
    jumps: [
      ...manual.findings.map((f) => ({ id: f.id, title: pen.line(f.title) })),
      { id: 'measure', title: words.findings.measure },
    ],
  }),
}
