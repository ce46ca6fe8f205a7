import type { ProcedureContext } from '../../../src/compose/procedures/chosen.ts'
import type { ManualCaution } from '../../../src/model/manual/caution.ts'

/** A track with pylons and a harrow, of which nothing is known in numbers. */
export const harrowHere = (
  surface: ProcedureContext['here']['surface'],
): ProcedureContext['here'] => ({
  surface,
  rail: 'pylons',
  units: 'us',
  capabilities: new Set(['harrow']),
  si: () => undefined,
})

/** Cautions of whatever name, with the same signal and the same words. */
export const cautionWith =
  (signal: ManualCaution['signal']): ProcedureContext['caution'] =>
  (id) => ({
    id,
    signal,
    hazard: 'h',
    avoid: 'a',
    more: undefined,
    machine: false,
    sources: [],
  })
