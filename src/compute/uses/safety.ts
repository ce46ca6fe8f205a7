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
  reach: fixed(15 * inch, 'a bag is held out in front'),
  height: fixed(6 * inch, 'hands under a bag that lies on the ground'),
  travel: fixed(30 * inch, 'from there to a truck bed at hip height'),
  twist: fixed(Math.PI / 6, 'a third of a quarter turn'),
  often: fixed(1, 'a few bags now and then, less than an hour in all'),
  grip: fixed(0.9, 'a bag sags and has no handles'),
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
  ...(known.has('gear.spray.tank') ? [use(57, 'bank', truckOnBank, bank)] : []),
  use(58, 'newcomer', heatShift, { shift }),
  use(59, 'drinks', drinkingWater, {
    every: fact('practice.heat.drink'),
    hours: shift,
    people: fact('crew.race-day'),
  }),
  use(80, 'noise', noise, { level: fact('practice.noise'), shift }),
  use(81, 'silica', silica, { dust: fact('practice.dust') }),
  use(82, 'lift', lifting, { ...bag, load: fact('practice.bag') }),
  use(83, 'line', powerLine, { voltage: fact('practice.line-voltage') }),
  use(84, 'thunder', lightning, {
    seconds: fact('practice.flash-to-thunder'),
    wait: fact('practice.lightning-wait'),
  }),
  use(85, 'letters', letterHeight, { distance: fact('practice.sign-distance') }),
]
