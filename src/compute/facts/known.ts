import type { Provenance } from '../../model/figure.ts'

/** A value that the facility gives, or that stands in for it, before it is labelled and printed. */
export type KnownValue = { readonly si: number; readonly provenance: Provenance }

export type KnownValues = ReadonlyMap<string, KnownValue>
