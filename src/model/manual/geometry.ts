import type { Rail } from '../oval-choices.ts'

/** Dimensions that drawings are made from, SI. */
export type OvalGeometry = {
  readonly straight: number
  readonly radius: number
  readonly offset: number
  readonly lap: number
  readonly railLength: number
  readonly widthStraights: number
  readonly widthTurns: number
  readonly crossFallStraights: number
  readonly crossFallTurns: number
  readonly stationSpacing: number
  readonly rail: Rail
  /** Counterclockwise seen from above unless the facility says otherwise. */
  readonly direction: 'counterclockwise' | 'clockwise'
  /**
   * Direction in which horses run on the home straight, degrees clockwise from true north;
   * undefined where nobody has said.
   */
  readonly homeBearing: number | undefined
  /** Cross-fall as found by levels; undefined where none were taken. */
  readonly foundStraights: number | undefined
  readonly foundTurns: number | undefined
  readonly cushionDepth: number
  /** Undefined where nobody has dug or read it from plans. */
  readonly baseDepth: number | undefined
  readonly ridgeHeight: number
  /**
   * Gates, drains, water points …: station along the rail from the start of the home straight, m;
   * offset from the rail, m.
   */
  readonly marks: readonly {
    readonly kind: 'gate' | 'drain' | 'water' | 'finish' | 'stand' | 'stockpile'
    readonly name: string
    readonly station: number
    readonly offset: number
    /** Gate to which a stockpile is hauled, by name. */
    readonly gate: string | undefined
    /** A gate by which machines come and go. */
    readonly machines?: boolean
  }[]
}
