import type { ManualMethod, ManualSheet } from '../../model/manual/procedure.ts'
import { namesIn } from '../../model/placeholders.ts'
import type { Procedure } from '../../validate/schemas/procedure.ts'
import { byNumber } from '../figures/figures.ts'
import { cautionsOf, here, type ProcedureContext, texts } from './chosen.ts'

/** Large numbers that a posted sheet has room for. */
const mostFigures = 5

/** Numbers of the worksheets behind all that a sheet names. */
function worksheetsOf(names: readonly string[], c: ProcedureContext): readonly string[] {
  return [...new Set(names.flatMap((name) => c.worksheetOf(name) ?? []))].sort(byNumber)
}

/**
 * The posted sheet follows the first of its methods that applies here; a sheet that stands alone
 * needs its steps' cautions too.
 */
export function composeSheet(
  { sheet, ...procedure }: Procedure,
  methods: readonly ManualMethod[],
  c: ProcedureContext,
): ManualSheet {
  const method =
    sheet.methods.flatMap((id) => methods.find((m) => m.id === id) ?? [])[0] ?? methods[0]
  const steps = method?.steps ?? []
  const figures = here(sheet.figures, c)
    .filter((f) => c.known(f.figure))
    .slice(0, mostFigures)
    .map((f) => ({ name: f.figure, label: f.label }))
  const named = [
    ...figures.map((f) => f.name),
    ...steps.flatMap((s) => [...s.figures, ...namesIn(s.do), ...namesIn(s.note ?? '')]),
  ]
  return {
    when: sheet.when,
    cautions: cautionsOf(sheet.cautions, c),
    figures,
    steps,
    drawing: method?.drawing ?? sheet.drawing,
    done: texts(sheet.done, c),
    stop: texts(procedure.stop, c),
    reckoner: sheet.reckoner === undefined ? undefined : c.reckoner(sheet.reckoner),
    worksheets: worksheetsOf(named, c),
  }
}
