import { didYouMeanOneOf } from '../model/closest.ts'
import type { Problem } from '../model/problem.ts'
import type { Path } from '../read/read-yaml.ts'
import type { Library, Sourced } from './check-library.ts'
import { saidTwice } from './said-twice.ts'
import type { Card } from './schemas/cards.ts'
import type { Procedure } from './schemas/procedure.ts'

export type Names = { readonly what: string; readonly ids: ReadonlySet<string> }

export const names = (what: string, list: readonly Sourced<{ readonly id: string }>[]): Names => ({
  what,
  ids: new Set(list.map((i) => i.value.id)),
})

/** A reference that leads nowhere, with its place. */
export function checkRef(
  item: Sourced<unknown>,
  path: Path,
  id: string | undefined,
  target: Names,
): Problem[] {
  if (id === undefined || target.ids.has(id)) return []
  const at = [...item.path, ...path]
  return [
    item.tree.problem(item.tree.placeOf(at), 'ref/missing', `there is no ${target.what} "${id}"`, {
      hint: didYouMeanOneOf(id, [...target.ids]),
    }),
  ]
}

type Targets = {
  readonly procedures: Names
  readonly cautions: Names
  readonly symptoms: Names
  readonly sections: Names
  readonly reckoners: Names
  readonly sources: Names
}

function procedureRefs(item: Sourced<Procedure>, t: Targets): Problem[] {
  const p = item.value
  const methods: Names = {
    what: 'method in this procedure',
    ids: new Set(p.methods.map((m) => m.id)),
  }
  const list = (path: Path, ids: readonly string[] | undefined, target: Names): Problem[] =>
    (ids ?? []).flatMap((id, i) => checkRef(item, [...path, i], id, target))
  return [
    ...checkRef(item, ['section'], p.section, t.sections),
    ...checkRef(item, ['next'], p.next, t.procedures),
    ...list(['symptoms'], p.symptoms, t.symptoms),
    ...list(['cautions'], p.cautions, t.cautions),
    ...list(['references'], p.references, t.sources),
    ...list(['reckoners'], p.reckoners, t.reckoners),
    ...checkRef(item, ['sheet', 'reckoner'], p.sheet.reckoner, t.reckoners),
    ...p.background.flatMap((b, i) =>
      checkRef(item, ['background', i, 'source'], b.source, t.sources),
    ),
    ...p.failures.flatMap((f, i) =>
      checkRef(item, ['failures', i, 'procedure'], f.procedure, t.procedures),
    ),
    ...(p.branches ?? []).flatMap((b, i) => [
      ...checkRef(item, ['branches', i, 'method'], b.method, methods),
      ...checkRef(item, ['branches', i, 'procedure'], b.procedure, t.procedures),
    ]),
    ...p.methods.flatMap((m, i) =>
      m.steps.flatMap((s, j) =>
        list(['methods', i, 'steps', j, 'cautions'], s.cautions, t.cautions),
      ),
    ),
    ...p.training.questions.flatMap((q, i) =>
      q.right > q.choices.length
        ? [
            item.tree.problem(
              item.tree.placeOf(['training', 'questions', i, 'right']),
              'schema/choice',
              `there is no choice ${q.right}`,
              { hint: `there are ${q.choices.length} choices` },
            ),
          ]
        : [],
    ),
  ]
}

const cardRefs = (item: Sourced<Card>, t: Targets): Problem[] => [
  ...item.value.cautions.flatMap((id, i) => checkRef(item, ['cautions', i], id, t.cautions)),
  ...(item.value.reckoners ?? []).flatMap((id, i) =>
    checkRef(item, ['reckoners', i], id, t.reckoners),
  ),
]

/** Every reference from one part of the library to another that leads nowhere. */
export function libraryReferences(
  library: Omit<Library, 'words' | 'wordsFile'>,
  sourceIds: ReadonlySet<string>,
): Problem[] {
  const t: Targets = {
    procedures: names('procedure', library.procedures),
    cautions: names('caution', library.cautions),
    symptoms: names('symptom', library.symptoms),
    sections: names('section', library.sections),
    reckoners: names('reckoner', library.reckoners),
    sources: { what: 'source', ids: sourceIds },
  }
  return [
    ...library.procedures.flatMap((item) => [...procedureRefs(item, t), ...saidTwice(item)]),
    ...library.cautions.flatMap((item) =>
      item.value.sources.flatMap((id, i) => checkRef(item, ['sources', i], id, t.sources)),
    ),
    ...library.symptoms.flatMap((item) =>
      item.value.causes.flatMap((c, i) =>
        checkRef(item, ['causes', i, 'procedure'], c.procedure, t.procedures),
      ),
    ),
    ...library.cards.flatMap((item) => cardRefs(item, t)),
    ...library.courses.flatMap((item) =>
      item.value.lessons.flatMap((id, i) => checkRef(item, ['lessons', i], id, t.procedures)),
    ),
  ]
}
