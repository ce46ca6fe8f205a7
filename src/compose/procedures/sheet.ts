import type {
  ManualMethod,
  ManualProcedure,
  ManualSheet,
  ManualStep,
  SheetGroup,
} from '../../model/manual/procedure.ts'
import { namesIn } from '../../model/placeholders.ts'
import { wayLetter } from '../../model/way-letter.ts'
import type { Procedure } from '../../validate/schemas/procedure.ts'
import { byNumber } from '../figures/figures.ts'
import { here, type ProcedureContext, texts } from './chosen.ts'

/** Large numbers that a posted sheet has room for. */
const mostFigures = 5

/** Numbers of the worksheets behind all that a sheet names. */
function worksheetsOf(names: readonly string[], c: ProcedureContext): readonly string[] {
  return [...new Set(names.flatMap((name) => c.worksheetOf(name) ?? []))].sort(byNumber)
}

/** How many first steps all ways have in common. */
function commonSteps(methods: readonly ManualMethod[]): number {
  const [first, ...others] = methods
  if (!first || others.length === 0) return 0
  const differs = first.steps.findIndex((step, i) => others.some((m) => m.steps[i]?.do !== step.do))
  return Math.max(0, differs)
}

const numbered = (steps: readonly ManualStep[], before: number): ManualStep[] =>
  steps.map((step, i) => ({ ...step, number: before + i + 1 }))

/** Every way that applies here. */
function groupsOf(methods: readonly ManualMethod[]): readonly SheetGroup[] {
  const [only] = methods
  if (only && methods.length === 1)
    return [{ letter: undefined, method: only.id, title: undefined, steps: only.steps }]
  const common = commonSteps(methods)
  const first: SheetGroup[] =
    common === 0 || !only
      ? []
      : [
          {
            letter: undefined,
            method: undefined,
            title: undefined,
            steps: only.steps.slice(0, common),
          },
        ]
  return [
    ...first,
    ...methods.map((m, i) => ({
      letter: wayLetter(i, methods.length),
      method: m.id,
      title: m.title,
      steps: numbered(m.steps.slice(common), common),
    })),
  ]
}

/** The drawing asked for where a step that applies here cites it, else the first that one cites. */
function sheetDrawing(
  asked: string | undefined,
  methods: readonly ManualMethod[],
): string | undefined {
  if (asked === undefined) return undefined
  const cited = methods.flatMap((m) => m.steps.flatMap((s) => s.drawing ?? []))
  return cited.includes(asked) ? asked : cited[0]
}

/** Notes that a posted sheet keeps. */
function withVitalNotes(procedure: Procedure, methods: readonly ManualMethod[]): ManualMethod[] {
  const vital = new Set(
    procedure.methods.flatMap((m) => m.steps.flatMap((s) => (s.vital && s.note) || [])),
  )
  return methods.map((m) => ({
    ...m,
    steps: m.steps.map((s) => ({
      ...s,
      note: s.note !== undefined && vital.has(s.note) ? s.note : undefined,
    })),
  }))
}

/**
 * The posted sheet: what was found, then every way of working that applies here. Nothing that
 * belongs here is left out; how it is parted over pages is found when it is printed.
 */
export function composeSheet(
  procedure: Procedure,
  all: readonly ManualMethod[],
  branches: ManualProcedure['branches'],
  c: ProcedureContext,
): ManualSheet {
  const { sheet, stop } = procedure
  const methods = withVitalNotes(procedure, all)
  const figures = here(sheet.figures, c)
    .filter((f) => c.known(f.figure))
    .slice(0, mostFigures)
    .map((f) => ({ name: f.figure, label: f.label }))
  const named = [
    ...figures.map((f) => f.name),
    ...methods.flatMap((m) =>
      m.steps.flatMap((s) => [...s.figures, ...namesIn(s.do), ...namesIn(s.note ?? '')]),
    ),
  ]
  const letter = (method: string | undefined): string | undefined =>
    wayLetter(
      methods.findIndex((m) => m.id === method),
      methods.length,
    )
  return {
    when: sheet.when,
    figures,
    calls: sheet.calls ?? [],
    look: branches.map((b) => ({
      found: b.found,
      do: b.do,
      letter: letter(b.method),
      procedure: b.procedure,
    })),
    groups: groupsOf(methods),
    drawing: sheetDrawing(sheet.drawing, methods),
    done: texts(sheet.done, c),
    stop: texts(stop, c),
    reckoner: sheet.reckoner === undefined ? undefined : c.reckoner(sheet.reckoner),
    worksheets: worksheetsOf(named, c),
  }
}
