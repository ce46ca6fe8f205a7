import { symptomsView } from '../../views/symptoms-view.ts'
import type { SiteContext, SitePage } from '../page.ts'

/** Questions with what fits each answer: lists of links, which a script makes into a choice. */
const questionsView = ({ manual, pen }: SiteContext) =>
  manual.chooser.questions.map(({ ask, answers }) => ({
    ask: pen.line(ask),
    answers: answers.map(({ says, symptoms }) => ({
      says: pen.line(says),
      symptoms: manual.symptoms
        .filter(({ id }) => symptoms.includes(id))
        .map((s) => ({ id: s.id, says: pen.line(s.says) })),
    })),
  }))

export const symptoms: SitePage = {
  id: 'symptoms',
  words: ['menu', 'about'],
  door: true,
  data: (site) => {
    const { manual, pen } = site
    return {
      questions: questionsView(site),
      measures: manual.chooser.measures.map(({ id, do: what, procedure }) => ({
        id,
        do: pen.line(what),
        href: procedure === undefined ? undefined : pen.context.procedureHref(procedure),
      })),
      symptoms: symptomsView(manual, pen),
    }
  },
}
