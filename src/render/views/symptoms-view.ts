import type { ManualSymptom } from '../../model/manual/symptom.ts'
import type { Manual } from '../../model/manual.ts'
import type { Pen } from './pen.ts'

/** What is seen → check → cause → procedure. */
export const symptomView = (s: ManualSymptom, pen: Pen) => ({
  id: s.id,
  says: pen.line(s.says),
  looks: pen.line(s.looks),
  stop: pen.line(s.stop),
  causes: s.causes.map((c) => ({
    check: pen.line(c.check),
    by: c.by,
    cause: pen.line(c.cause),
    href: pen.context.procedureHref(c.procedure) ?? '',
    leads: pen.manual.procedures.find((p) => p.id === c.procedure)?.title ?? c.procedure,
    leadsTo: pen.context.procedureNumber?.(c.procedure) ?? '',
  })),
})

export type SymptomView = ReturnType<typeof symptomView>

export const symptomsView = (manual: Manual, pen: Pen): readonly SymptomView[] =>
  manual.symptoms.map((s) => symptomView(s, pen))
