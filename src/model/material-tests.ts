/** A sieve analysis of the cushion; shares by dry mass. */
export type SieveTest = {
  readonly date: string
  readonly by: string
  /** Coarsest first: designation, opening in meters, share that passes. */
  readonly sieves: readonly {
    readonly name: string
    readonly opening: number
    readonly passing: number
  }[]
  /** Share finer than 2 micrometers, by hydrometer. */
  readonly clay: number | undefined
  readonly limits: { readonly liquid: number; readonly plastic: number } | undefined
}

/** Density of a packed base at one place: wet, kg/m³, and moisture by dry mass. */
export type DensityTest = { readonly wet: number; readonly moisture: number }
