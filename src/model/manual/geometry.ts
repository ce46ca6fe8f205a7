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
  readonly cushionDepth: number
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
  }[]
}
