import * as z from 'zod'
import { didYouMeanOneOf } from '../../model/closest.ts'
import type { Problem } from '../../model/problem.ts'
import type { Path } from '../../read/read-yaml.ts'
import type { Library, Sourced } from '../../validate/check-library.ts'
import { checkSchema } from '../../validate/check-schema.ts'
import type { Procedure } from '../../validate/schemas/procedure.ts'
import { drawingWords } from './drawing.ts'
import { allDrawings } from './drawings.ts'

type Numbered = Readonly<Record<string, { readonly number: number }>>

/** Two drawings never have one number, since sheets, book and site cite them by it. */
function takenNumbers({ tree }: Library['wordsFile'], drawings: Numbered): Problem[] {
  const by = new Map<number, string>()
  return Object.entries(drawings).flatMap(([name, { number }]) => {
    const taken = by.get(number)
    by.set(number, name)
    return taken === undefined
      ? []
      : [
          tree.problem(
            tree.placeOf(['drawings', name, 'number']),
            'ref/duplicate-id',
            `drawing ${number} is "${taken}" already`,
            { hint: 'take a number that no drawing has' },
          ),
        ]
  })
}

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

/** Nothing in the steps says when to look at the drawing of a sheet. */
function uncited({ value: p, tree, path }: Sourced<Procedure>): Problem[] {
  const { drawing } = p.sheet
  const cited = p.methods.some((m) => m.steps.some((s) => s.drawing === drawing))
  if (drawing === undefined || cited) return []
  return [
    tree.problem(
      tree.placeOf([...path, 'sheet', 'drawing']),
      'ref/missing',
      `no step cites the drawing "${drawing}"`,
      { hint: `write "drawing: ${drawing}" at the step that needs it` },
    ),
  ]
}

const procedureDrawings = (p: Sourced<Procedure>): Problem[] => [
  ...unknownName(p, p.value.sheet.drawing, ['sheet', 'drawing']),
  ...p.value.methods.flatMap((m, i) =>
    m.steps.flatMap((s, j) => unknownName(p, s.drawing, ['methods', i, 'steps', j, 'drawing'])),
  ),
  ...p.value.measure.flatMap((m, i) => unknownName(p, m.drawing, ['measure', i, 'drawing'])),
  ...unknownName(p, p.value.training.drawing, ['training', 'drawing']),
  ...uncited(p),
]

/** What is measured first leads to a drawing that some step places. */
function unplaced(procedures: Library['procedures']): Problem[] {
  const placed = new Set(
    procedures.flatMap((p) => p.value.methods.flatMap((m) => m.steps.map((s) => s.drawing))),
  )
  return procedures.flatMap(({ tree, path, value }) =>
    value.measure.flatMap(({ drawing }, i) => {
      if (drawing === undefined || !names.includes(drawing) || placed.has(drawing)) return []
      const place = tree.placeOf([...path, 'measure', i, 'drawing'])
      return [
        tree.problem(place, 'ref/missing', `no step cites the drawing "${drawing}"`, {
          hint: `write "drawing: ${drawing}" at the step that it belongs to`,
        }),
      ]
    }),
  )
}

/** The words of all drawings, with their labels and numbers. */
function drawingsInWords(wordsFile: Library['wordsFile']): readonly Problem[] {
  const { value, problems } = checkSchema(wordsFile.tree, schema)
  return value === undefined ? problems : [...problems, ...takenNumbers(wordsFile, value.drawings)]
}

/**
 * Holds the drawings against the library: each has its number, title, caption and labels in the
 * file of words, content names no other, and a step cites what stands on a sheet.
 */
export const checkDrawings = (library: Library): readonly Problem[] => [
  ...drawingsInWords(library.wordsFile),
  ...library.procedures.flatMap(procedureDrawings),
  ...unplaced(library.procedures),
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
