import { contactPressure } from '../sealing/contact-pressure.ts'
import { sealingTime } from '../sealing/sealing-time.ts'
import { type Binding, fact, figure, fixed, type Use, use } from './use.ts'

/**
 * The way of rolling that the facility has; trucks come first, because they press harder and are
 * always there.
 */
function rolling(
  known: ReadonlySet<string>,
): Record<'time' | 'count' | 'laps', Binding> | undefined {
  if (known.has('gear.roll-tires.tire-width'))
    return {
      time: figure('roll.time'),
      count: fact('gear.roll-tires.count'),
      laps: figure('roll.laps'),
    }
  return known.has('gear.roll-drum.width')
    ? {
        time: figure('drum.time'),
        count: fact('gear.roll-drum.count'),
        laps: figure('drum.laps'),
      }
    : undefined
}

/**
 * Time to seal, and what presses how hard. Where no drum stands on the grounds, the tires are held
 * against a rented one.
 * @param known Paths of the facts that the facility has.
 */
export function sealingUses(known: ReadonlySet<string>): readonly Use[] {
  const flatten = known.has('gear.screen.width') ? figure('screen.time') : undefined
  const roll = rolling(known)
  const uses: Use[] = []
  if (flatten || roll) {
    uses.push(
      use('seal', sealingTime, {
        flatten: flatten ?? fixed(0, 'nothing-flattens'),
        roll: roll?.time ?? fixed(0, 'nothing-rolls'),
        laps: flatten ? figure('screen.laps') : fixed(1, 'nothing-flattens'),
        rollers: roll?.count ?? fixed(0, 'nothing-rolls'),
        rollLaps: roll?.laps ?? fixed(1, 'nothing-rolls'),
        people: fact('crew.people'),
        margin: fact('practice.seal.margin'),
      }),
    )
  }
  if (known.has('gear.roll-tires.tire-pressure')) {
    uses.push(
      use('press', contactPressure, {
        inflation: fact('gear.roll-tires.tire-pressure'),
        mass: fact(known.has('gear.roll-drum.mass') ? 'gear.roll-drum.mass' : 'practice.drum.mass'),
        share: fixed(0.5, 'half-the-roller'),
        width: fact(
          known.has('gear.roll-drum.width') ? 'gear.roll-drum.width' : 'practice.drum.width-low',
        ),
        diameter: fact('practice.drum.diameter'),
        leastSink: fact('practice.drum.sink-low'),
        mostSink: fact('practice.drum.sink-high'),
      }),
    )
  }
  return uses
}
