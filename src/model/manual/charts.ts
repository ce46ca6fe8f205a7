/**
 * What charts are made from: values in SI beside the same values as printed. A chart without its
 * inputs is undefined.
 */
export type Charts = {
  readonly waterMonths: readonly WaterMonth[] | undefined
  readonly heat: HeatTable | undefined
  readonly interval: RaceInterval | undefined
  readonly drying: DryingCurve | undefined
  readonly countdown: Countdown | undefined
  /** Stations of the latest level survey, in their order. */
  readonly levels: readonly LevelSection[]
  /** Undefined where no truck rolls. */
  readonly rolling: RollingBlock | undefined
  /** Undefined where its example cannot be worked out. */
  readonly washout: WashoutCut | undefined
  /** By the figures' name: `grade`, `harrow`, `spray` … */
  readonly passes: Readonly<Record<string, PassPattern>>
}

/** A washout in section, m: as found it is a V as wide and deep as the square cut. */
export type WashoutCut = {
  readonly width: number
  readonly depth: number
  readonly lifts: number
  /** Share of the V that is filled thinner than what holds. */
  readonly thinShare: number
  readonly cushion: number
}

/** Water that a dry day takes in one month, m³. */
export type WaterMonth = {
  readonly name: string
  readonly short: string
  readonly water: number
  readonly text: string
  readonly loads: string
  /** The month of the fair. */
  readonly own: boolean
}

/**
 * How hot it feels, by air temperature and humidity, with the risk level of each field from 1
 * (lower) to 4 (very high).
 */
export type HeatTable = {
  readonly humidities: readonly string[]
  readonly rows: readonly {
    readonly temperature: string
    readonly cells: readonly { readonly text: string; readonly level: number }[]
  }[]
}

/** Seconds after the finish of a race. */
export type RaceInterval = {
  readonly interval: number
  readonly clear: number
  readonly lap: number
  readonly laps: number
  readonly harrowed: number
  /** Everybody is off; people and rakes are counted. */
  readonly off: number
  readonly open: number
  /** Undefined where no lap of water fits. */
  readonly water:
    | {
        /** The figure of its laps. */
        readonly figure: string
        readonly laps: number
        readonly from: number
        readonly to: number
        /** In place of the harrow, not behind it. */
        readonly instead: boolean
      }
    | undefined
}

/**
 * Moisture (share of dry weight) of the bare cushion over time, s, from full; when it comes to the
 * moisture wanted and to dust.
 */
export type DryingCurve = {
  readonly points: readonly { readonly time: number; readonly moisture: number }[]
  readonly held: number
  readonly target: number
  readonly dusty: number
  readonly workable: number
  readonly dust: number
}

/**
 * One way of covering the track or the strip next to the rail: how many strips lie side by side,
 * how many laps that is (strips are driven over more than once), and how much of the ground one
 * covers, m. Texts are names of quantities.
 */
export type PassPattern = {
  readonly figure: string
  readonly strips: number
  readonly laps: number
  /** Laps in which a strip is done: more than one where tires leave loose ground between them. */
  readonly perStrip: number
  /** How far the work reaches from the rail, m; undefined where it goes to the outside edge. */
  readonly band: number | undefined
  readonly covers: number
  /** By how much one strip lies over the last at the least, m. */
  readonly over: number
  /** Of the tool against straight across, radians. */
  readonly angle: number
  /** Width of the tool, m. */
  readonly tool: number
  readonly width: string
  /** Undefined where strips are laid edge to edge. */
  readonly overlap: string | undefined
  readonly from: 'rail' | 'outside'
  /** Each lap moves over by half of the tool, so that all ground but the first is done twice. */
  readonly half: boolean
}

/**
 * How trucks roll the track, m: a block is the laps until the left strips meet the right ones, and
 * blocks lie side by side. `places` is where the inside edge of the inside tires runs on each lap of
 * a block, from its beginning, `at` and `next` as printed, from the rail.
 */
export type RollingBlock = {
  readonly tread: number
  readonly perSide: number
  readonly gap: number
  readonly track: number
  readonly overlap: number
  readonly width: number
  readonly places: readonly {
    readonly offset: number
    readonly at: string
    /** The same lap of the second block, as printed. */
    readonly next: string
  }[]
  /** Where the blocks begin, from the rail. */
  readonly starts: readonly number[]
  /** The same as printed. */
  readonly begins: readonly string[]
  readonly across: number
  readonly trucks: number
  /** For the whole width, all trucks together. */
  readonly laps: number
  /** Loose ground between the tires of both sides, as printed. */
  readonly between: string
}

/**
 * A day of the calendar before the fair: `date` as `YYYY-MM-DD`, `label` as printed in its corner.
 */
export type CountdownDay = {
  readonly date: string
  /** With its weekday, as printed. */
  readonly text: string
  readonly label: string
  readonly isRaceDay: boolean
  /** Over when the manual was made. */
  readonly isPast: boolean
  readonly tasks: readonly string[]
}

/** Whole weeks up to the last race day, and what is due before and after them, dates as printed. */
export type Countdown = {
  readonly weekdays: readonly string[]
  readonly weeks: readonly (readonly CountdownDay[])[]
  readonly earlier: readonly { readonly date: string; readonly task: string }[]
  readonly later: readonly { readonly date: string; readonly task: string }[]
}

/**
 * A section across the track as found by levels. Offsets from the rail and heights above the wanted
 * slope in meters, `height` as printed.
 */
export type LevelSection = {
  readonly station: string
  readonly width: number
  readonly found: string
  readonly wanted: string
  readonly points: readonly {
    readonly offset: number
    readonly above: number
    readonly height: string
  }[]
}
