import type { Problem } from '../model/problem.ts'
import type { Path } from '../read/read-yaml.ts'
import type { Library, Sourced } from './check-library.ts'
import { checkRef, type Names, names } from './library-references.ts'
import type { ChooserFile } from './schemas/chooser.ts'
import type { Symptom } from './schemas/library.ts'

const named = (what: string, list: readonly { readonly id: string }[]): Names => ({
  what,
  ids: new Set(list.map(({ id }) => id)),
})

function symptomRefs(item: Sourced<Symptom>, { questions, measures }: ChooserFile): Problem[] {
  const { marks, causes } = item.value
  return [
    ...Object.entries(marks).flatMap(([asked, answers]) => {
      const question = questions.find(({ id }) => id === asked)
      return question
        ? answers.flatMap((answer, i) =>
            checkRef(item, ['marks', asked, i], answer, named('answer', question.answers)),
          )
        : checkRef(item, ['marks', asked], asked, named('question', questions))
    }),
    ...causes.flatMap(({ by }, i) =>
      checkRef(item, ['causes', i, 'by'], by, named('measure', measures)),
    ),
  ]
}

/** An answer that fits nothing would lead nowhere. */
function unfit(
  { value, tree }: Sourced<ChooserFile>,
  symptoms: readonly Sourced<Symptom>[],
): Problem[] {
  const fits = (question: string, answer: string): boolean =>
    symptoms.some((s) => s.value.marks[question]?.includes(answer) === true)
  const at = (q: number, a: number): Path => ['questions', q, 'answers', a, 'id']
  return value.questions.flatMap((question, q) =>
    question.answers.flatMap(({ id }, a) =>
      fits(question.id, id)
        ? []
        : [
            tree.problem(
              tree.placeOf(at(q, a)),
              'ref/missing',
              `no symptom has the answer "${id}"`,
              {
                hint: `put it under "marks" of a symptom, or take it out here`,
              },
            ),
          ],
    ),
  )
}

/** What the chooser and the symptoms say of each other. */
export function chooserReferences(
  library: Pick<Library, 'chooser' | 'symptoms' | 'procedures'>,
): readonly Problem[] {
  const procedures = names('procedure', library.procedures)
  return library.chooser.flatMap((file) => [
    ...library.symptoms.flatMap((symptom) => symptomRefs(symptom, file.value)),
    ...unfit(file, library.symptoms),
    ...file.value.measures.flatMap(({ procedure }, i) =>
      checkRef(file, ['measures', i, 'procedure'], procedure, procedures),
    ),
  ])
}
