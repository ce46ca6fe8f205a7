import { firstPlaces, rollingPattern } from '../../compute/sealing/rolling-pattern.ts'
import type { RollingBlock } from '../../model/manual/charts.ts'
import { type ComposeContext, printed } from '../context.ts'

/** The first block of rolling, by the same pattern as its worksheet. */
export function composeRollingBlock(context: ComposeContext): RollingBlock | undefined {
  const x = context.engine.siOfAll({
    tread: 'gear.roll-tires.tire-width',
    perSide: 'gear.roll-tires.tires-per-side',
    gap: 'gear.roll-tires.tire-gap',
    track: 'gear.roll-tires.tire-track',
    overlap: 'gear.roll-tires.tire-overlap',
    width: 'roll.width',
  })
  if (!x) return undefined
  const { tread, perSide, gap, track, width } = x
  return {
    tread,
    perSide,
    gap,
    track,
    width,
    places: firstPlaces(rollingPattern(x)).map((offset) => ({
      offset,
      at: printed(offset, 'smallWidth', context),
    })),
  }
}
