import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { foot } from '../../model/quantity/units.ts'
import { banking } from '../oval/banking.ts'
import { edgeRise } from '../oval/edge-rise.ts'
import { lapExtra } from '../oval/lap-extra.ts'
import { outsideLength } from '../oval/outside-length.ts'
import { pylons } from '../oval/pylons.ts'
import { railLength } from '../oval/rail-length.ts'
import { fittedShape } from '../oval/rail-line/fitted-shape.ts'
import { walkedLine } from '../oval/rail-line/walked-line.ts'
import { shapeFromLapAndRadius } from '../oval/shape-from-lap-and-radius.ts'
import { shapeFromLapAndStraight } from '../oval/shape-from-lap-and-straight.ts'
import { shapeFromStraightAndRadius } from '../oval/shape-from-straight-and-radius.ts'
import { stationCount } from '../oval/station-count.ts'
import { trackArea } from '../oval/track-area.ts'
import { turnLength } from '../oval/turn-length.ts'
import { fact, figure, fixed, type Use, use } from './use.ts'

const offset = fact('oval.measuring-offset')
const straight = figure('shape.straight')
const radius = figure('shape.radius')
const widthStraights = fact('oval.width.straights')
const widthTurns = fact('oval.width.turns')
const crossFallStraights = fact('oval.cross-fall.straights')
const crossFallTurns = fact('oval.cross-fall.turns')

/** Everything that depends on where the strip lies and how wide it is. */
export const strip = { straight, radius, widthStraights, widthTurns }

/**
 * The shape from any two of lap, straight and radius. Where all three are known, the straight gives
 * way: its ends are harder to see than a certified lap, or than how far apart the rails stand.
 */
function shape(known: ReadonlySet<string>): Use {
  const measuredLap = fact('oval.lap')
  const measuredStraight = fact('oval.straight')
  const measuredRadius = fact('oval.radius')
  if (known.has('oval.lap') && known.has('oval.radius'))
    return use('shape', shapeFromLapAndRadius, { measuredLap, measuredRadius, offset })
  if (known.has('oval.straight') && known.has('oval.radius'))
    return use('shape', shapeFromStraightAndRadius, { measuredStraight, measuredRadius, offset })
  return use('shape', shapeFromLapAndStraight, { measuredLap, measuredStraight, offset })
}

/** The oval by the line of the rail as it was walked. */
function walked(known: ReadonlySet<string>): Use[] {
  if (!known.has('rail-line.length')) return []
  const off = fact('oval.rail-line.offset')
  const lap = figure('shape.lap')
  return [
    use('walked', walkedLine, { length: fact('rail-line.length'), walked: off, offset, lap }),
    use('fitted', fittedShape, {
      straightFitted: fact('rail-line.straight'),
      radiusFitted: fact('rail-line.radius'),
      walked: off,
      worst: fact('rail-line.worst'),
      straight,
      radius,
    }),
  ]
}

/**
 * What the oval itself measures.
 * @param known Paths of the facts that the facility has.
 * @param system Decides whether "one step farther out" is a foot or a meter.
 */
export const ovalUses = (known: ReadonlySet<string>, system: UnitSystem): readonly Use[] => [
  shape(known),
  use('rail', railLength, { straight, radius }),
  use('outside', outsideLength, { straight, radius, widthTurns }),
  use('foot', lapExtra, { out: fixed(system === 'us' ? foot : 1, 'one-step-out') }),
  use('turn', turnLength, { radius, offset }),
  use('area', trackArea, strip),
  use('stations', stationCount, {
    rail: figure('rail.length'),
    spacing: fact('oval.station-spacing'),
  }),
  ...(known.has('oval.pylons.turns') && known.has('oval.pylons.straights')
    ? [
        use('pylons', pylons, {
          straight,
          radius,
          turns: fact('oval.pylons.turns'),
          straights: fact('oval.pylons.straights'),
        }),
      ]
    : []),
  use('rise', edgeRise, { widthStraights, widthTurns, crossFallStraights, crossFallTurns }),
  ...walked(known),
  use('banking', banking, {
    radius,
    offset,
    crossFall: crossFallTurns,
    pace: fact('oval.race-pace'),
  }),
]
