import { machineFor } from '../../compute/facts/collect.ts'
import { isFigureId } from '../../compute/uses/ids.ts'
import type { Capability } from '../../model/capability.ts'
import type { ManualProcedure } from '../../model/manual/procedure.ts'
import { applies } from '../applies.ts'
import { type ComposeContext, isKnown, itemsOf } from '../context.ts'
import { bookedDays } from '../facility/booked.ts'
import { cautionsHere } from './cautions.ts'
import type { ProcedureContext } from './chosen.ts'
import { composeProcedure } from './procedure.ts'

/** The name of a machine, and the days on which it is here where these are few. */
function machineHere(can: Capability, context: ComposeContext): string | undefined {
  const { file } = context.facility
  const found = machineFor(file, can)
  const booked = found && bookedDays(file.equipment?.[found.index], context)
  return booked === undefined ? found?.name : `${found?.name} (${booked})`
}

function procedureContext(context: ComposeContext, present: ReadonlySet<string>): ProcedureContext {
  const { here, facility, engine, parts } = context
  const cautions = cautionsHere(context)
  return {
    here,
    facility: facility.file,
    machine: (can) => machineHere(can, context),
    caution: (id) => cautions.get(id),
    reckoner: (id) => parts.reckoners.find((r) => r.id === id),
    present: (id) => id !== undefined && present.has(id),
    worksheetOf: (name) => (isFigureId(name) ? engine.figure(name)?.worksheet : undefined),
    known: (name) => isKnown(name, context),
  }
}

/**
 * The procedures that apply here, section by section as the library orders them; numbers count what
 * is kept.
 */
export function composeProcedures(context: ComposeContext): readonly ManualProcedure[] {
  const { library, here } = context
  const kept = itemsOf(library.procedures).filter((p) => applies(p.when, here))
  const forEach = procedureContext(context, new Set(kept.map((p) => p.id)))
  const sections = itemsOf(library.sections).filter((s) => kept.some((p) => p.section === s.id))
  return sections.flatMap(({ id }, i) =>
    kept
      .filter((p) => p.section === id)
      .sort((a, b) => a.order - b.order)
      .map((p, j) => composeProcedure(p, `${i + 1}.${j + 1}`, forEach)),
  )
}
