import type { ManualMethod, ManualStep } from '../../model/manual/procedure.ts'
import type { ProcedureMethod, ProcedureStep } from '../../validate/schemas/procedure.ts'
import { cautionsOf, here, isComplete, type ProcedureContext } from './chosen.ts'

function composeSteps(steps: readonly ProcedureStep[], c: ProcedureContext): ManualStep[] {
  return here(steps, c).map((step, i) => ({
    number: i + 1,
    do: step.do,
    note: isComplete(step.note, c) ? step.note : undefined,
    cautions: cautionsOf(step.cautions, c),
    figures: (step.figures ?? []).filter(c.known),
    drawing: step.drawing,
  }))
}

/** The methods of a procedure that have something to do here. */
export const composeMethods = (
  methods: readonly ProcedureMethod[],
  c: ProcedureContext,
): ManualMethod[] =>
  here(methods, c)
    .map((method) => ({
      id: method.id,
      title: method.title,
      choose: method.choose,
      steps: composeSteps(method.steps, c),
    }))
    .filter((m) => m.steps.length > 0)
