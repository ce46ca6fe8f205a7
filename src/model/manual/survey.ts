/** One reading of the depth survey with the ground that it stands for, for the map; meters. */
export type MapCell = {
  /** Where it was read, along the rail. */
  readonly station: number
  readonly from: number
  readonly to: number
  readonly inner: number
  readonly outer: number
  readonly value: number
  readonly text: string
}

/** Material as printed: its dry mass, and how many loads of the truck here it makes as it lies. */
export type MapAmount = { readonly mass: string; readonly loads: number | undefined }

/** Material that goes from one station of the survey to another, or across at one. */
export type MapMove = MapAmount & {
  readonly from: number
  readonly to: number
  /** Stations as printed. */
  readonly names: { readonly from: string; readonly to: string }
}

/** The latest depth survey, as far as a map needs it; meters. */
export type CushionMap = {
  /** Its day as printed. */
  readonly day: string
  readonly target: number
  readonly tolerance: number
  /** Depths at which a class begins, as printed. */
  readonly limits: Readonly<Record<'farTooDeep' | 'tooDeep' | 'tooThin' | 'farTooThin', string>>
  readonly stations: readonly { readonly at: number; readonly text: string }[]
  readonly cells: readonly MapCell[]
  /** The largest first. */
  readonly moves: readonly MapMove[]
  /** What no stretch needs, and what none can give. */
  readonly spare: MapAmount | undefined
  readonly missing: MapAmount | undefined
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
