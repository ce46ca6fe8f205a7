import type { Chooser } from '../../model/manual/chooser.ts'
import { type ComposeContext, itemsOf } from '../context.ts'

/** What is asked about what is seen, with the symptoms of this track that each answer fits. */
export function composeChooser({ library, parts }: ComposeContext): Chooser {
  const files = itemsOf(library.chooser)
  const here = new Set(parts.symptoms.map(({ id }) => id))
  const procedures = new Set(parts.procedures.map(({ id }) => id))
  const symptoms = itemsOf(library.symptoms).filter(({ id }) => here.has(id))
  const fitting = (question: string, answer: string): readonly string[] =>
    symptoms.filter(({ marks }) => marks[question]?.includes(answer)).map(({ id }) => id)
  return {
    questions: files.flatMap(({ questions }) =>
      questions.map(({ id, ask, answers }) => ({
        id,
        ask,
        answers: answers
          .map((answer) => ({ ...answer, symptoms: fitting(id, answer.id) }))
          .filter((answer) => answer.symptoms.length > 0),
      })),
    ),
    measures: files.flatMap(({ measures }) =>
      measures.map(({ id, do: what, procedure }) => ({
        id,
        do: what,
        procedure: procedure !== undefined && procedures.has(procedure) ? procedure : undefined,
      })),
    ),
  }
}
