/** One reading of the depth survey with the ground that it stands for, for the map; meters. */
export type MapCell = {
  readonly from: number
  readonly to: number
  readonly inner: number
  readonly outer: number
  readonly value: number
  readonly text: string
}

/** The latest depth survey, as far as a map needs it; meters. */
export type CushionMap = {
  readonly date: string
  readonly target: number
  readonly tolerance: number
  readonly cells: readonly MapCell[]
}

/** The latest sieve analysis: openings and sizes in meters. */
export type GrainCurve = {
  readonly points: readonly {
    readonly name: string
    readonly opening: number
    readonly passing: number
  }[]
  readonly grit: number
  readonly gritText: string
  readonly sizes: readonly {
    readonly name: string
    readonly share: number
    readonly size: number
  }[]
}
