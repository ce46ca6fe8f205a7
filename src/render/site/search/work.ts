import type { ManualProcedure } from '../../../model/manual/procedure.ts'
import type { FindablesOf } from './entry.ts'

/** Everything that the steps of a procedure say. */
const stepTexts = (p: ManualProcedure): readonly string[] =>
  p.methods.flatMap((m) => [m.choose ?? '', ...m.steps.flatMap((s) => [s.do, s.note ?? ''])])

/** What is done, and what is seen that leads to it. */
export const procedures: FindablesOf = ({ manual, pen }) =>
  manual.procedures.map((p) => ({
    kind: 'procedure',
    href: `procedures/${p.id}.html`,
    title: p.title,
    lines: [p.purpose, ...p.triggers, ...p.methods.map((m) => m.title)].map(pen.plain),
    text: [
      p.bar ?? '',
      ...p.branches.flatMap((b) => [b.found, b.do]),
      ...p.failures.flatMap((f) => [f.see, f.do]),
      ...p.tools,
      ...stepTexts(p),
    ].map(pen.plain),
  }))

export const symptoms: FindablesOf = ({ manual, pen }) =>
  manual.symptoms.map((s) => ({
    kind: 'symptom',
    href: `symptoms.html#${s.id}`,
    title: pen.plain(s.says),
    lines: [s.looks, ...s.causes.map((c) => c.check)].map(pen.plain),
    text: s.causes.map((c) => pen.plain(c.cause)),
  }))

export const plans: FindablesOf = ({ manual, pen }) =>
  manual.schedules.map((plan) => ({
    kind: 'plan',
    href: `plans/${plan.id}.html`,
    title: pen.plain(plan.title),
    lines: [plan.about, ...plan.tables.map((t) => t.title)].map(pen.plain),
    text: plan.tables.flatMap((t) => [t.about ?? '', ...t.heads]).map(pen.plain),
  }))

export const forms: FindablesOf = ({ manual, pen }) =>
  manual.forms.map((f) => ({
    kind: 'form',
    href: `forms.html#${f.id}`,
    title: pen.plain(f.title),
    lines: [pen.plain(f.about)],
    text: [f.who, f.moment, ...f.boxes.map((b) => b.label)].map(pen.plain),
  }))

/** Hazards once each, as in their own chapter. */
export const hazards: FindablesOf = ({ manual, pen }) =>
  manual.cautions.map((c) => ({
    kind: 'hazard',
    href: `hazards.html#hazard-${c.id}`,
    title: pen.plain(c.hazard),
    lines: [pen.plain(c.avoid)],
    text: [pen.plain(c.more ?? '')],
  }))
