import { bySignal, type ManualCaution, worstOf } from '../../model/manual/caution.ts'
import type { ManualMethod, ManualProcedure } from '../../model/manual/procedure.ts'
import type { Procedure } from '../../validate/schemas/procedure.ts'

const ofSteps = (methods: readonly ManualMethod[]): readonly ManualCaution[] =>
  methods.flatMap((m) => m.steps.flatMap((s) => s.cautions))

/**
 * The worst signal stands first on every page: a hazard of one step that is worse than all in the
 * box at the head moves up into it, since no hazard stands twice in one procedure.
 */
export function worstFirst(
  head: readonly ManualCaution[],
  methods: readonly ManualMethod[],
): { readonly cautions: readonly ManualCaution[]; readonly methods: readonly ManualMethod[] } {
  const worst = worstOf(head)
  const worse = (c: ManualCaution): boolean => worst === undefined || bySignal(c, worst) < 0
  const moved = ofSteps(methods).filter(worse)
  if (moved.length === 0) return { cautions: head, methods }
  return {
    cautions: [...head, ...moved].sort(bySignal),
    methods: methods.map((m) => ({
      ...m,
      steps: m.steps.map((s) => ({ ...s, cautions: s.cautions.filter((c) => !worse(c)) })),
    })),
  }
}

/**
 * What the box at the head is read before: a machine that moves, or the work; where help is called
 * for, it is for whoever helps.
 */
export function beforeWhat(
  p: Procedure,
  head: readonly ManualCaution[],
  methods: readonly ManualMethod[],
): ManualProcedure['before'] {
  if ([...head, ...ofSteps(methods)].some((c) => c.machine)) return 'machine'
  return p.sheet.calls ? 'self' : 'start'
}
