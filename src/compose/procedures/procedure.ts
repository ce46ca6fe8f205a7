import type { ManualMethod, ManualProcedure } from '../../model/manual/procedure.ts'
import type { Procedure } from '../../validate/schemas/procedure.ts'
import { cautionsOf, here, ifPresent, isComplete, type ProcedureContext, texts } from './chosen.ts'
import { composeMethods } from './methods.ts'
import { composeSheet } from './sheet.ts'
import { beforeWhat, worstFirst } from './worst-first.ts'

type Part<Key extends keyof ManualProcedure> = Pick<ManualProcedure, Key>

/** What it is for, who does it, and how long it takes. */
const head = (
  p: Procedure,
  c: ProcedureContext,
): Part<
  'id' | 'title' | 'bar' | 'section' | 'purpose' | 'triggers' | 'symptoms' | 'who' | 'time'
> => ({
  id: p.id,
  title: p.title,
  bar: p.bar,
  section: p.section,
  purpose: p.purpose,
  triggers: p.triggers.filter((t) => p.triggers.length === 1 || isComplete(t, c)),
  symptoms: p.symptoms ?? [],
  who: p.who,
  time: here(p.time, c)
    .filter((t) => (t.figure === undefined || c.known(t.figure)) && isComplete(t.text, c))
    .map((t) => ({ figure: t.figure, text: t.text })),
})

/** What is brought to it. */
const needs = (p: Procedure, c: ProcedureContext): Part<'gear' | 'tools' | 'materials'> => ({
  gear: (p.needs ?? []).map((n) => ({
    can: n.can,
    why: n.why,
    machine: c.machine(n.can),
    instead: n.instead,
  })),
  tools: p.tools ?? [],
  // An amount that is not known here says nothing.
  materials: here(p.materials, c)
    .filter((m) => m.figure === undefined || c.known(m.figure))
    .map((m) => ({ name: m.name, figure: m.figure })),
})

/** What is looked at first, and what is done for what was found. */
const look = (
  p: Procedure,
  methods: readonly ManualMethod[],
  c: ProcedureContext,
): Part<'measure' | 'branches'> => ({
  measure: here(p.measure, c).map((m) => ({
    do: m.do,
    how: isComplete(m.how, c) ? m.how : undefined,
    drawing: m.drawing,
  })),
  branches: here(p.branches, c).map((b) => ({
    found: b.found,
    do: b.do,
    method: methods.find((m) => m.id === b.method)?.id,
    procedure: ifPresent(b.procedure, c),
  })),
})

/** How it is known to be done, and what is done when it is not. */
const done = (
  p: Procedure,
  c: ProcedureContext,
): Part<'checks' | 'failures' | 'stop' | 'records'> => ({
  checks: texts(p.checks, c),
  failures: here(p.failures, c).map((f) => ({
    see: f.see,
    do: f.do,
    procedure: ifPresent(f.procedure, c),
  })),
  stop: texts(p.stop, c),
  records: p.records,
})

/** Why it is done so, and where to read on. */
const behind = (
  p: Procedure,
  c: ProcedureContext,
): Part<'background' | 'references' | 'reckoners' | 'next' | 'notes' | 'training'> => ({
  background: here(p.background, c)
    .filter((b) => isComplete(b.text, c))
    .map((b) => ({ text: b.text, source: b.source })),
  references: p.references ?? [],
  reckoners: (p.reckoners ?? []).flatMap((id) => c.reckoner(id) ?? []),
  next: ifPresent(p.next, c),
  notes: (c.facility.notes ?? []).filter((n) => n.procedure === p.id).map((n) => n.text),
  training: p.training,
})

/** Keeps of a procedure what applies to the facility, with its cautions and reckoners in place. */
export function composeProcedure(
  p: Procedure,
  number: string,
  c: ProcedureContext,
): ManualProcedure {
  const { cautions, methods } = worstFirst(cautionsOf(p.cautions, c), composeMethods(p.methods, c))
  const looked = look(p, methods, c)
  return {
    number,
    ...head(p, c),
    ...needs(p, c),
    cautions,
    before: beforeWhat(p, cautions, methods),
    ...looked,
    methods,
    ...done(p, c),
    ...behind(p, c),
    sheet: composeSheet(p, methods, looked.branches, c),
  }
}
