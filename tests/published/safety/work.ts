import type { Refusal } from '../../../src/compute/calculation.ts'
import { drinkingWater } from '../../../src/compute/safety/drinking-water.ts'
import { heatShift } from '../../../src/compute/safety/heat-shift.ts'
import { lifting } from '../../../src/compute/safety/lifting.ts'
import { lightning } from '../../../src/compute/safety/lightning.ts'
import { noiseDose, permittedByRule } from '../../../src/compute/safety/noise.ts'
import { powerLine } from '../../../src/compute/safety/power-line.ts'
import { eightHourMean, silica } from '../../../src/compute/safety/silica.ts'
import { truckOnBank } from '../../../src/compute/safety/truck-on-bank.ts'
import { heatRisk } from '../../../src/compute/weather/heat.ts'
import { factSpec } from '../../../src/model/fact-spec.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { parseQuantity } from '../../../src/model/quantity/parse-quantity.ts'
import { numberOf } from '../../compute/support/answers.ts'
import { type Inputs, type Runner, si } from '../earth/case.ts'

const hour = 3600
const risks = ['lower', 'moderate', 'high', 'very high']
const typical = (path: string): number => {
  const read = parseQuantity(factSpec(path)?.typical('stone-dust')?.us ?? '', { plain: true })
  if (!read.ok) throw new Error(path)
  return read.quantity.si
}

/** Pairs of a level and hours. */
const segments = (x: Inputs): readonly (readonly [number, number])[] => x.words('segments').map((w) => w.split(',').map(Number) as [number, number])

const lift = (x: Inputs): number => toUnit(numberOf(lifting.compute({
  reach: x.si('H_in', 'in'), height: x.si('V_in', 'in'), travel: x.si('D_in', 'in'), twist: (x.n('A_deg') * Math.PI) / 180, often: x.n('FM'), grip: x.n('CM'), load: 1,
}).limit), 'lb')

const heatMinutes = (x: Inputs) => heatShift.compute({ shift: x.n('shift_min') * 60 })
const minutes = (...values: (number | Refusal | undefined)[]): number[] => values.map((v) => Math.round(numberOf(v) / 60))
const wait = typical('practice.lightning-wait')

/** What each case asks for, by the name of its formula. */
export const safetyAtWork: Readonly<Record<string, Runner>> = {
  silicaLimits: () => {
    // Dust of 100 µg/m³ reaches a level after as many hours as the level is of 100, times eight.
    const at = silica.compute({ dust: si(100, 'ug/m3') })
    const level = (time: number | Refusal | undefined): number => (numberOf(time) / (8 * hour)) * 100
    return { PEL_ug_m3: Math.round(level(at.limit)), action_level_ug_m3: Math.round(level(at.action)), averaging_h: 8 }
  },
  dustMean: (x) => ({ value: toUnit(eightHourMean(segments(x).map(([dust, hours]) => ({ dust: si(dust, 'ug/m3'), time: hours * hour }))), 'ug/m3') }),
  risk: (x) => ({ value: risks[heatRisk(x.n('heat_index_F')) - 1] }),
  newcomer: (x) => {
    const at = heatMinutes(x)
    return { value: [...minutes(at.first, at.second, at.third, at.fourth), x.n('shift_min')] }
  },
  returning: (x) => {
    const at = heatMinutes(x)
    return { value: [...minutes(at.returning, at['returning-second'], at['returning-third']), x.n('shift_min')] }
  },
  cups: (x) => ({ value: x.list('every_min').map((every) => {
    const { crew } = drinkingWater.compute({ every: every * 60, hours: hour, people: 1 })
    return Math.round(toUnit(numberOf(crew), 'gal') * 128)
  }) }),
  thunder: (x) => ({ value: toUnit(numberOf(lightning.compute({ seconds: x.n('seconds'), wait }).distance), 'mi') }),
  allClear: (x) => ({ value: Math.max(...x.list('thunder_min')) + numberOf(lightning.compute({ seconds: 1, wait }).clear) / 60 }),
  lightningState: (x) => ({ value: x.n('minutes') * 60 >= numberOf(lightning.compute({ seconds: 1, wait }).clear) ? 'cleared' : 'wait' }),
  line: (x) => ({ value: Math.round(toUnit(numberOf(powerLine.compute({ voltage: x.si('kV', 'kV') }).distance), 'ft')) }),
  unknownLine: () => ({ value: Math.round(toUnit(numberOf(powerLine.compute({ voltage: typical('practice.line-voltage') }).distance), 'ft')) }),
  cut: (x) => ({ value: Math.round(toUnit(typical(x.words('item')[0] === 'spoil_back_ft' ? 'practice.spoil-back' : 'practice.open-cut'), 'ft')) }),
  noise: (x) => ({ value: permittedByRule(x.n('L_dBA')) / hour }),
  dose: (x) => ({ value: 100 * noiseDose(segments(x).map(([level, hours]) => ({ level, time: hours * hour }))) }),
  lift: (x) => ({ value: lift(x) }),
  liftIndex: (x) => ({ value: numberOf(lifting.compute({ reach: si(15, 'in'), height: si(36, 'in'), travel: si(30, 'in'), twist: Math.PI / 6, often: 1, grip: 0.95, load: x.si('load_lb', 'lb') }).index) }),
  tank: (x) => ({ value: toUnit(numberOf(truckOnBank.compute({ tank: x.si('gal', 'gal'), crossFall: 0.06, threshold: 0.35 }).water), 'lb') }),
}
