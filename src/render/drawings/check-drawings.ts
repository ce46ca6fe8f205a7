import * as z from 'zod'
import { didYouMeanOneOf } from '../../model/closest.ts'
import type { Problem } from '../../model/problem.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { Library, Sourced } from '../../validate/check-library.ts'
import { checkSchema } from '../../validate/check-schema.ts'
import { drawingWords } from './drawing.ts'
import { allDrawings } from './drawings.ts'

/** Exactly the words that the drawings ask for; other groups are none of their business. */
const schema = z.looseObject({
  drawings: z.strictObject(Object.fromEntries(allDrawings.map((d) => [d.name, drawingWords]))),
  labels: z.strictObject(
    Object.fromEntries(allDrawings.map(({ labels }) => [labels.group, labels.schema])),
  ),
})

const names: readonly string[] = allDrawings.map((d) => d.name)

function unknownName(
  { tree, path }: Sourced<unknown>,
  name: string | undefined,
  at: Path,
): Problem[] {
  if (name === undefined || names.includes(name)) return []
  return [
    tree.problem(tree.placeOf([...path, ...at]), 'ref/missing', `there is no drawing "${name}"`, {
      hint: didYouMeanOneOf(name, names),
    }),
  ]
}

/**
 * Holds the drawings against the library: each has its title, caption and labels in the file of
 * words, and content names no other.
 */
export const checkDrawings = (library: Library): readonly Problem[] => [
  ...checkSchema(library.wordsFile.tree, schema).problems,
  ...library.procedures.flatMap((p) => [
    ...unknownName(p, p.value.sheet.drawing, ['sheet', 'drawing']),
    ...p.value.methods.flatMap((m, i) => unknownName(p, m.drawing, ['methods', i, 'drawing'])),
  ]),
  ...library.schedules.flatMap((p) =>
    (p.value.drawings ?? []).flatMap((name, i) => unknownName(p, name, ['drawings', i])),
  ),
  ...library.fieldBook.flatMap((b) =>
    (['pages', 'handout'] as const).flatMap((list) =>
      b.value[list].flatMap((page, i) =>
        page.parts.flatMap((part, j) =>
          unknownName(b, part.drawing, [list, i, 'parts', j, 'drawing']),
        ),
      ),
    ),
  ),
]
