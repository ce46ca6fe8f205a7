import { inch } from '../../model/quantity/units.ts'
import { drinkingWater } from '../safety/drinking-water.ts'
import { heatShift } from '../safety/heat-shift.ts'
import { letterHeight } from '../safety/letter-height.ts'
import { lifting } from '../safety/lifting.ts'
import { lightning } from '../safety/lightning.ts'
import { noise } from '../safety/noise.ts'
import { powerLine } from '../safety/power-line.ts'
import { silica } from '../safety/silica.ts'
import { truckOnBank } from '../safety/truck-on-bank.ts'
import { fact, figure, fixed, type Use, use } from './use.ts'

const shift = fact('practice.shift')

/**
 * A bag between the ground and a truck bed at hip height, up or down, at one side: what volunteers
 * do without thinking.
 */
const bag = {
  reach: fixed(15 * inch, 'bag-in-front'),
  height: fixed(6 * inch, 'bag-on-ground'),
  travel: fixed(30 * inch, 'bag-to-truck-bed'),
  twist: fixed(Math.PI / 6, 'bag-to-one-side'),
  often: fixed(1, 'bag-now-and-then'),
  grip: fixed(0.9, 'bag-without-handles'),
}

/** The water truck at its spraying speed on the measured line of the turn. */
const bank = {
  tank: fact('gear.spray.tank'),
  crossFall: fact('oval.cross-fall.turns'),
  threshold: fact('practice.roll-threshold'),
  radius: figure('shape.radius'),
  offset: fact('oval.measuring-offset'),
  pace: fact('gear.spray.speed'),
}

/** Figures behind the cautions. */
export const safetyUses = (known: ReadonlySet<string>): readonly Use[] => [
  ...(known.has('gear.spray.tank') ? [use('bank', truckOnBank, bank)] : []),
  use('newcomer', heatShift, { shift }),
  use('drinks', drinkingWater, {
    every: fact('practice.heat.drink'),
    hours: shift,
    people: fact('crew.race-day'),
  }),
  use('noise', noise, { level: fact('practice.noise'), shift }),
  use('silica', silica, { dust: fact('practice.dust') }),
  use('lift', lifting, { ...bag, load: fact('practice.bag') }),
  use('line', powerLine, { voltage: fact('practice.line-voltage') }),
  use('thunder', lightning, {
    seconds: fact('practice.flash-to-thunder'),
    wait: fact('practice.lightning-wait'),
  }),
  use('letters', letterHeight, { distance: fact('practice.sign-distance') }),
]
