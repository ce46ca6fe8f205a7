import { groupsAt } from '../../../edit/form/data.ts'
import type { Question } from '../../../edit/form/question.ts'
import type { Capability } from '../../../model/capability.ts'
import { capabilityOf, factPaths, factSpec } from '../../../model/fact-spec.ts'
import {
  boxesControl,
  type Choice,
  type Control,
  dayControl,
  selectControl,
  textControl,
} from '../controls.ts'
import { choiceSaid } from '../said.ts'
import type { Sitting } from '../sitting.ts'

/** More choices than these stand in a list that opens. */
const mostBoxes = 5

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** What can be measured here, under the names of its screens. */
function measurable(sitting: Sitting): readonly Choice[] {
  const { screens, draft } = sitting
  const subjects = screens.flatMap(({ subject, first, more }) =>
    [
      ...first.flatMap(({ question }) => question.entries ?? []),
      ...more.map((q) => q.path.join('.')),
    ].map((at) => [at, subject.title] as const),
  )
  const titles = new Map(subjects)
  const can = new Set(
    groupsAt(draft().data, ['equipment']).flatMap(
      (m) => (m['can'] as Capability[] | undefined) ?? [],
    ),
  )
  const machines = screens.find((s) => s.subject.id === 'machines')?.subject.title
  return factPaths.flatMap((fact): Choice[] => {
    const work = capabilityOf(fact)
    const group = work ? (can.has(work) ? machines : undefined) : titles.get(fact)
    const label = sentence(factSpec(fact)?.label ?? fact)
    if (group === undefined) return []
    const said = work
      ? `${label} (${sitting.said.form.choices['equipment.can']?.[work] ?? work})`
      : label
    return [{ value: fact, said, group }]
  })
}

/** The control by which a question is answered. */
export function controlOf(question: Question, typed: string, sitting: Sitting): Control {
  const { field } = sitting.said.form.says
  switch (question.kind) {
    case 'choice':
    case 'choices': {
      const choices = question.choices.map((value) => ({
        value,
        said: choiceSaid(sitting.said, question, value),
      }))
      if (question.kind === 'choices') return boxesControl(choices, 'checkbox')
      return choices.length <= mostBoxes
        ? boxesControl(choices, 'radio')
        : selectControl(choices, field.choose)
    }
    case 'yes-no':
      return boxesControl(
        [
          { value: 'true', said: field.yes },
          { value: 'false', said: field.no },
        ],
        'radio',
      )
    case 'date':
      return dayControl(typed)
    case 'fact':
      return selectControl(measurable(sitting), field.choose)
    case 'procedure': {
      const procedures = sitting.worked()?.manual?.procedures ?? []
      return selectControl(
        procedures.map(({ id, title }) => ({ value: id, said: title })),
        field.choose,
      )
    }
    case 'file': {
      const files = sitting.tableNames()
      return files.length === 0
        ? textControl(1)
        : selectControl(
            files.map((name) => ({ value: name, said: name })),
            field.choose,
          )
    }
    case 'texts':
    case 'dates':
      return textControl(3)
    case 'long-text':
      return textControl(4)
    case 'phone':
      return textControl(1, 'tel')
    default:
      return textControl(1)
  }
}
