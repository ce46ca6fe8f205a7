import { drinkingWater } from '../safety/drinking-water.ts'
import { heatShift } from '../safety/heat-shift.ts'
import { letterHeight } from '../safety/letter-height.ts'
import { lifting } from '../safety/lifting.ts'
import { lightning } from '../safety/lightning.ts'
import { noise } from '../safety/noise.ts'
import { powerLine } from '../safety/power-line.ts'
import { silica } from '../safety/silica.ts'
import { truckOnBank } from '../safety/truck-on-bank.ts'
import { fact, fixed, type Use, use } from '../use.ts'

const shift = fact('practice.shift')

/** A bag taken from a truck bed at hip height to the ground at one side: what volunteers do without thinking. */
const bag = {
  reach: fixed(0.38, 'a bag is held out in front'),
  height: fixed(0.91, 'a truck bed at hip height'),
  travel: fixed(0.76, 'down to the ground, nearly'),
  twist: fixed(Math.PI / 6, 'a third of a quarter turn'),
  often: fixed(1, 'now and then'),
  grip: fixed(0.95, 'a bag has no handles'),
}

/** Figures behind the cautions. */
export const safetyUses = (known: ReadonlySet<string>): readonly Use[] => [
  ...(known.has('gear.spray.tank') ? [use(57, 'bank', truckOnBank, { tank: fact('gear.spray.tank'), crossFall: fact('oval.cross-fall.turns'), threshold: fact('practice.roll-threshold') })] : []),
  use(58, 'newcomer', heatShift, { shift }),
  use(59, 'drinks', drinkingWater, { every: fact('practice.heat.drink'), hours: shift, people: fact('crew.race-day') }),
  use(80, 'noise', noise, { level: fact('practice.noise'), shift }),
  use(81, 'silica', silica, { dust: fact('practice.dust') }),
  use(82, 'lift', lifting, { ...bag, load: fact('practice.bag') }),
  use(83, 'line', powerLine, { voltage: fact('practice.line-voltage') }),
  use(84, 'thunder', lightning, { seconds: fact('practice.flash-to-thunder'), wait: fact('practice.lightning-wait') }),
  use(85, 'letters', letterHeight, { distance: fact('practice.sign-distance') }),
]
