import type { CushionMap, MapAmount, MapMove } from '../../../model/manual/survey.ts'
import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, labels } from '../drawing.ts'
import type { DepthClass } from './classes.ts'

export const wording = labels('cushion', {
  ...entries('asWanted', 'take', 'travel', 'rail', 'outside'),
  wanted: holding('depth', 'tolerance'),
  farTooDeep: holding('depth'),
  tooDeep: holding('depth'),
  tooThin: holding('depth'),
  farTooThin: holding('depth'),
  move: holding('from', 'to', 'amount'),
  across: holding('from', 'mass'),
  loads: holding('mass', 'count'),
  smaller: holding('count'),
  spare: holding('amount'),
  missing: holding('amount'),
  wider: holding('factor', 'date'),
  foundOn: holding('date'),
})
export type MapContext = ContextFor<typeof wording>

/** What a class is called, with the depth at which it begins. */
export const classSaid = (of: DepthClass, map: CushionMap, { words }: MapContext): string =>
  of === 'asWanted' ? words.asWanted : fill(words[of], { depth: map.limits[of] })

export const wantedSaid = ({ words, q }: MapContext): string =>
  fill(words.wanted, {
    depth: q('cushion.depth.target'),
    tolerance: q('cushion.depth.tolerance'),
  })

/** A mass with the loads that it makes; across the track a blade moves it, and nothing is loaded. */
const amountSaid = ({ mass, loads }: MapAmount, { words }: MapContext): string =>
  loads === undefined ? mass : fill(words.loads, { mass, count: String(loads) })

export const moveSaid = (move: MapMove, context: MapContext): string =>
  move.from === move.to
    ? fill(context.words.across, { from: move.names.from, mass: move.mass })
    : fill(context.words.move, { ...move.names, amount: amountSaid(move, context) })

/** What is left when all of it is moved. */
export const leftSaid = (map: CushionMap, context: MapContext): readonly string[] => [
  ...(map.spare ? [fill(context.words.spare, { amount: amountSaid(map.spare, context) })] : []),
  ...(map.missing
    ? [fill(context.words.missing, { amount: amountSaid(map.missing, context) })]
    : []),
]
