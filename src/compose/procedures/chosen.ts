import type { Capability } from '../../model/capability.ts'
import { bySignal, type ManualCaution } from '../../model/manual/caution.ts'
import type { ManualReckoner } from '../../model/manual/reckoner.ts'
import { namesIn } from '../../model/placeholders.ts'
import type { FacilityFile } from '../../validate/schemas/facility.ts'
import type { When } from '../../validate/schemas/when.ts'
import { applies, type Circumstances } from '../applies.ts'

/** What composing a procedure needs beside the procedure. */
export type ProcedureContext = {
  readonly here: Circumstances
  readonly facility: FacilityFile
  /** Name of the machine that does a kind of work here, with its days where it is not here always. */
  readonly machine: (can: Capability) => string | undefined
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

/** Entries of a list that belong here. */
export const here = <T extends Conditional>(
  list: readonly T[] | undefined,
  c: ProcedureContext,
): T[] => (list ?? []).filter((item) => applies(item.when, c.here))

/** Texts of a list that belong here. */
export const texts = (
  list: readonly (Conditional & { readonly text: string })[],
  c: ProcedureContext,
): string[] => here(list, c).map((item) => item.text)

/** A procedure that is led to, where the manual has it. */
export const ifPresent = (id: string | undefined, c: ProcedureContext): string | undefined =>
  c.present(id) ? id : undefined

/**
 * Whether all that a text names has a value here: what rests on something that is not known is left
 * out, not printed with a gap.
 */
export const isComplete = (text: string | undefined, c: ProcedureContext): boolean =>
  namesIn(text ?? '').every(c.known)

/** Cautions that can stand here, the worst first. */
export const cautionsOf = (
  ids: readonly string[] | undefined,
  c: ProcedureContext,
): ManualCaution[] => (ids ?? []).flatMap((id) => c.caution(id) ?? []).sort(bySignal)
