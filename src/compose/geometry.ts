import type { Engine } from '../compute/engine/engine.ts'
import type { QuantityId } from '../compute/uses/ids.ts'
import type { OvalGeometry } from '../model/manual.ts'
import type { FacilityFile } from '../validate/schemas/facility.ts'

/**
 * The oval as drawings need it. Width, fall and shape always have a value: measured, stated or
 * typical.
 */
export function composeGeometry(engine: Engine, file: FacilityFile): OvalGeometry {
  const value = (name: QuantityId): number => {
    const si = engine.si(name)
    if (si === undefined) throw new RangeError(`the oval has no ${name}`)
    return si
  }
  const marks =
    (file.oval.marks as
      | readonly {
          kind: 'gate'
          name: string
          station?: { si: number }
          side?: 'rail' | 'outside'
          gate?: string
        }[]
      | undefined) ?? []
  const widthTurns = value('oval.width.turns')
  return {
    straight: value('shape.straight'),
    radius: value('shape.radius'),
    lap: value('shape.lap'),
    offset: value('oval.measuring-offset'),
    railLength: value('rail.length'),
    widthStraights: value('oval.width.straights'),
    widthTurns,
    crossFallStraights: value('oval.cross-fall.straights'),
    crossFallTurns: value('oval.cross-fall.turns'),
    stationSpacing: value('oval.station-spacing'),
    rail: file.oval.rail ?? 'pylons',
    direction: file.oval.direction ?? 'counterclockwise',
    homeBearing: file.oval['home-bearing'],
    cushionDepth: value('cushion.depth.target'),
    ridgeHeight: value('ridge.taken'),
    marks: marks.map((m) => ({
      kind: m.kind,
      name: m.name,
      station: m.station?.si ?? 0,
      offset: m.side === 'rail' ? 0 : widthTurns,
      gate: m.gate,
    })),
  }
}
