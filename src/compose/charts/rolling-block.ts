import { blockStarts, firstPlaces, rollingPattern } from '../../compute/sealing/rolling-pattern.ts'
import type { RollingBlock } from '../../model/manual/charts.ts'
import { type ComposeContext, printed } from '../context.ts'

const inputs = {
  tread: 'gear.roll-tires.tire-width',
  perSide: 'gear.roll-tires.tires-per-side',
  gap: 'gear.roll-tires.tire-gap',
  track: 'gear.roll-tires.tire-track',
  overlap: 'gear.roll-tires.tire-overlap',
  trucks: 'gear.roll-tires.count',
  passes: 'gear.roll-tires.passes',
  width: 'roll.width',
  laps: 'roll.laps',
  straights: 'oval.width.straights',
  turns: 'oval.width.turns',
} as const

/** The blocks of rolling, by the same pattern as its worksheet. */
export function composeRollingBlock(context: ComposeContext): RollingBlock | undefined {
  const x = context.engine.siOfAll(inputs)
  if (!x) return undefined
  const { tread, perSide, gap, track, overlap, width, laps, trucks } = x
  const pattern = rollingPattern(x)
  const across = Math.max(x.straights, x.turns)
  const starts = blockStarts(width, overlap, across, Math.round(laps / (x.passes * pattern.laps)))
  const between = Math.max(0, track - perSide * tread - (perSide - 1) * gap)
  return {
    tread,
    perSide,
    gap,
    track,
    overlap,
    width,
    places: firstPlaces(pattern).map((offset) => ({
      offset,
      at: printed(offset, 'smallWidth', context),
      next: printed((starts[1] ?? 0) + offset, 'smallWidth', context),
    })),
    starts,
    begins: starts.map((start) => printed(start, 'smallWidth', context)),
    across,
    trucks,
    laps,
    between: printed(between, 'smallWidth', context),
  }
}
