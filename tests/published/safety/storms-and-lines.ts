import { allClear, lightning } from '../../../src/compute/safety/lightning.ts'
import { powerLine } from '../../../src/compute/safety/power-line.ts'
import { toUnit } from '../../../src/model/quantity/format-quantity.ts'
import { numberOf } from '../../compute/support/answers.ts'
import { type Runner, si } from '../case.ts'
import { usual } from '../usual.ts'

const feet = (length: number): number => Number(toUnit(length, 'ft').toFixed(9))
const wait = usual('practice.lightning-wait')
const clearAt = (thunders: readonly number[]): number =>
  toUnit(
    allClear(
      thunders.map((t) => si(t, 'min')),
      wait,
    ),
    'min',
  )
const distance = (voltage: number): number =>
  feet(numberOf(powerLine.compute({ voltage }).distance))

/** What people keep away from, and for how long. */
export const stormsAndLines: Readonly<Record<string, Runner>> = {
  thunder: (x) => ({
    value: toUnit(numberOf(lightning.compute({ seconds: x.n('seconds'), wait }).distance), 'mi'),
  }),
  allClear: (x) => ({ value: clearAt(x.list('thunder_min')) }),
  lightningState: (x) => ({ value: x.n('minutes') >= clearAt([0]) ? 'cleared' : 'wait' }),
  line: (x) => ({ value: distance(x.si('kV', 'kV')) }),
  unknownLine: () => ({ value: distance(usual('practice.line-voltage')) }),
  spoilBack: () => ({ value: feet(usual('practice.spoil-back')) }),
  openCut: () => ({ value: feet(usual('practice.open-cut')) }),
}
