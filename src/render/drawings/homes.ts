import type { Manual } from '../../model/manual.ts'

/** Drawings of the facility at a glance, which stands in front of all procedures. */
export const frontDrawings = ['plan', 'sections'] as const

/** Where the binder prints a drawing. */
export type DrawingHome =
  | { readonly kind: 'front' }
  | { readonly kind: 'plan'; readonly id: string; readonly title: string }
  | { readonly kind: 'procedure'; readonly id: string; readonly number: string }

type Homes = ReadonlyMap<string, DrawingHome>

/** How implements are driven round the oval: drawings that are read beside each other. */
const isPattern = (name: string): boolean => name.startsWith('passes-')

/** Patterns of a procedure that the binder prints side by side, as one drawing. */
export function patternsOf(homes: Homes, procedure: string): readonly string[] {
  const own = [...homes].filter(([, h]) => h.kind === 'procedure' && h.id === procedure)
  const patterns = own.map(([name]) => name).filter(isPattern)
  return patterns.length > 1 ? patterns : []
}

/** What its steps lead to; what is measured first may lead to a drawing of other pages alone. */
const citedBy = ({ methods }: Manual['procedures'][number]): readonly string[] =>
  methods.flatMap((m) => m.steps.flatMap((s) => s.drawing ?? []))

/**
 * The binder prints a drawing once: in front, with the plan that shows it, in the first procedure
 * whose sheet shows it, else in the first that cites it.
 */
export function drawingHomes(manual: Manual): Homes {
  const at = (p: Manual['procedures'][number]): DrawingHome => ({
    kind: 'procedure',
    id: p.id,
    number: p.number,
  })
  const inOrder: readonly (readonly [string, DrawingHome])[] = [
    ...frontDrawings.map((name) => [name, { kind: 'front' }] as const),
    ...manual.schedules.flatMap(({ id, title, drawings }) =>
      drawings.map((name) => [name, { kind: 'plan', id, title }] as const),
    ),
    ...manual.procedures.flatMap((p) =>
      p.sheet.drawing === undefined ? [] : [[p.sheet.drawing, at(p)] as const],
    ),
    ...manual.procedures.flatMap((p) => citedBy(p).map((name) => [name, at(p)] as const)),
  ]
  // The first entry counts, and a map keeps the last.
  return new Map([...inOrder].reverse())
}
