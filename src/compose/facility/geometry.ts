import type { OvalGeometry } from '../../model/manual/geometry.ts'
import type { Quantity } from '../../model/quantity/read-quantity.ts'
import type { ComposeContext } from '../context.ts'

const dimensions = {
  straight: 'shape.straight',
  radius: 'shape.radius',
  lap: 'shape.lap',
  offset: 'oval.measuring-offset',
  railLength: 'rail.length',
  widthStraights: 'oval.width.straights',
  widthTurns: 'oval.width.turns',
  crossFallStraights: 'oval.cross-fall.straights',
  crossFallTurns: 'oval.cross-fall.turns',
  stationSpacing: 'oval.station-spacing',
  cushionDepth: 'cushion.depth.target',
  ridgeHeight: 'ridge.taken',
} as const

/**
 * The oval as drawings need it. Width, fall and shape always have a value: measured, stated or
 * typical.
 */
export function composeGeometry({
  engine,
  facility,
}: Pick<ComposeContext, 'engine' | 'facility'>): OvalGeometry {
  const { oval } = facility.file
  const worked = engine.siOfAll(dimensions)
  if (!worked) throw new RangeError('a checked oval has all of its dimensions')
  return {
    ...worked,
    foundStraights: engine.si('levels.straights'),
    foundTurns: engine.si('levels.turns'),
    baseDepth: engine.si('base.depth'),
    rail: oval.rail ?? 'pylons',
    direction: oval.direction ?? 'counterclockwise',
    homeBearing: oval['home-bearing'],
    marks: (oval.marks ?? []).map((m) => ({
      kind: m.kind,
      name: m.name,
      station: (m.station as Quantity | undefined)?.si ?? 0,
      offset: m.side === 'rail' ? 0 : worked.widthTurns,
      gate: m.gate,
      machines: m.machines === true,
    })),
  }
}
