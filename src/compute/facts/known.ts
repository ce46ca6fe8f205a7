import type { Provenance } from '../../model/figure.ts'
import type { Place } from '../../model/problem.ts'
import type { Quantity } from '../../model/quantity/read-quantity.ts'

/** A value that the facility gives, or that stands in for it, before it is labelled and printed. */
export type KnownValue = { readonly si: number; readonly provenance: Provenance }

export type KnownValues = ReadonlyMap<string, KnownValue>

/** What a facility file says of a quantity: stated, or said as no more than an estimate. */
export const saidAt = (
  { si, isRough }: Pick<Quantity, 'si' | 'isRough'>,
  at: Place,
): KnownValue => ({
  si,
  provenance: { kind: isRough === true ? 'rough' : 'stated', at },
})
