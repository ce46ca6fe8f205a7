import { machineFor } from '../compute/facts/collect.ts'
import type {
  ManualCaution,
  ManualMethod,
  ManualProcedure,
  ManualReckoner,
  ManualSheet,
  ManualStep,
} from '../model/manual.ts'
import { namesIn } from '../model/placeholders.ts'
import type { FacilityFile } from '../validate/schemas/facility.ts'
import type { Procedure, ProcedureMethod, ProcedureStep } from '../validate/schemas/procedure.ts'
import type { When } from '../validate/schemas/when.ts'
import { applies, type Circumstances } from './applies.ts'

/** What composing a procedure needs beside the procedure. */
export type ProcedureContext = {
  readonly here: Circumstances
  readonly facility: FacilityFile
  readonly caution: (id: string) => ManualCaution | undefined
  readonly reckoner: (id: string) => ManualReckoner | undefined
  /** Whether a procedure is part of this facility's manual. */
  readonly present: (procedure: string | undefined) => boolean
  /** Number of the worksheet of a figure, if it has one. */
  readonly worksheetOf: (name: string) => string | undefined
  /** Whether a figure or fact has a value here. */
  readonly known: (name: string) => boolean
}

type Conditional = { readonly when?: When | undefined }

const here = <T extends Conditional>(list: readonly T[] | undefined, c: ProcedureContext): T[] =>
  (list ?? []).filter((item) => applies(item.when, c.here))
const texts = (
  list: readonly (Conditional & { readonly text: string })[],
  c: ProcedureContext,
): string[] => here(list, c).map((item) => item.text)
const ifPresent = (id: string | undefined, c: ProcedureContext): string | undefined =>
  c.present(id) ? id : undefined
const defined = <T>(x: T | undefined): x is T => x !== undefined

/**
 * Whether all that a text names has a value here: what rests on something that is not known is left
 * out, not printed with a gap.
 */
const isKnown = (text: string | undefined, c: ProcedureContext): boolean =>
  namesIn(text ?? '').every(c.known)

const cautionsOf = (ids: readonly string[] | undefined, c: ProcedureContext): ManualCaution[] =>
  (ids ?? []).map(c.caution).filter(defined)

function composeSteps(steps: readonly ProcedureStep[], c: ProcedureContext): ManualStep[] {
  return here(steps, c).map((step, i) => ({
    number: i + 1,
    do: step.do,
    note: isKnown(step.note, c) ? step.note : undefined,
    cautions: cautionsOf(step.cautions, c),
    figures: (step.figures ?? []).filter(c.known),
  }))
}

const composeMethod = (method: ProcedureMethod, c: ProcedureContext): ManualMethod => ({
  id: method.id,
  title: method.title,
  choose: method.choose,
  drawing: method.drawing,
  steps: composeSteps(method.steps, c),
})

/**
 * The posted sheet follows the first of its methods that applies here; a sheet that stands alone
 * needs its steps' cautions too.
 */
function composeSheet(
  p: Procedure,
  methods: readonly ManualMethod[],
  stop: readonly string[],
  c: ProcedureContext,
): ManualSheet {
  const method =
    p.sheet.methods.map((id) => methods.find((m) => m.id === id)).find(defined) ?? methods[0]
  const steps = method?.steps ?? []
  const figures = here(p.sheet.figures, c)
    .filter((f) => c.known(f.figure))
    .slice(0, 5)
    .map((f) => ({ name: f.figure, label: f.label }))
  const named = [
    ...figures.map((f) => f.name),
    ...steps.flatMap((s) => [...s.figures, ...namesIn(s.do), ...namesIn(s.note ?? '')]),
  ]
  return {
    when: p.sheet.when,
    cautions: cautionsOf(p.sheet.cautions, c),
    figures,
    steps,
    drawing: method?.drawing ?? p.sheet.drawing,
    done: texts(p.sheet.done, c),
    stop,
    reckoner: p.sheet.reckoner === undefined ? undefined : c.reckoner(p.sheet.reckoner),
    worksheets: [...new Set(named.map(c.worksheetOf).filter(defined))].sort(
      (a, b) => Number(a.slice(2)) - Number(b.slice(2)),
    ),
  }
}

/** Keeps of a procedure what applies to the facility, with its cautions and reckoners in place. */
export function composeProcedure(
  p: Procedure,
  number: string,
  c: ProcedureContext,
): ManualProcedure {
  const methods = here(p.methods, c)
    .map((m) => composeMethod(m, c))
    .filter((m) => m.steps.length > 0)
  const methodIds = new Set(methods.map((m) => m.id))
  const stop = texts(p.stop, c)
  return {
    id: p.id,
    number,
    title: p.title,
    section: p.section,
    purpose: p.purpose,
    triggers: p.triggers.filter((t) => p.triggers.length === 1 || isKnown(t, c)),
    symptoms: p.symptoms ?? [],
    who: p.who,
    time: here(p.time, c)
      .filter((t) => (t.figure === undefined || c.known(t.figure)) && isKnown(t.text, c))
      .map((t) => ({ figure: t.figure, text: t.text })),
    gear: (p.needs ?? []).map((n) => ({
      can: n.can,
      why: n.why,
      machine: machineFor(c.facility, n.can)?.name,
      instead: n.instead,
    })),
    tools: p.tools ?? [],
    // An amount that is not known here says nothing.
    materials: here(p.materials, c)
      .filter((m) => m.figure === undefined || c.known(m.figure))
      .map((m) => ({ name: m.name, figure: m.figure })),
    cautions: cautionsOf(p.cautions, c),
    measure: here(p.measure, c).map((m) => ({
      do: m.do,
      how: isKnown(m.how, c) ? m.how : undefined,
    })),
    branches: here(p.branches, c).map((b) => ({
      found: b.found,
      do: b.do,
      method: b.method !== undefined && methodIds.has(b.method) ? b.method : undefined,
      procedure: ifPresent(b.procedure, c),
    })),
    methods,
    checks: texts(p.checks, c),
    failures: here(p.failures, c).map((f) => ({
      see: f.see,
      do: f.do,
      procedure: ifPresent(f.procedure, c),
    })),
    stop,
    records: p.records,
    background: here(p.background, c)
      .filter((b) => isKnown(b.text, c))
      .map((b) => ({ text: b.text, source: b.source })),
    references: p.references ?? [],
    reckoners: (p.reckoners ?? []).map(c.reckoner).filter(defined),
    next: ifPresent(p.next, c),
    notes: (c.facility.notes ?? []).filter((n) => n.procedure === p.id).map((n) => n.text),
    sheet: composeSheet(p, methods, stop, c),
    training: p.training,
  }
}
