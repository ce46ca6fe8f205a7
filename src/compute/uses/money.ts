import type { Capability } from '../../model/capability.ts'
import { raceDayCost, taskCost } from '../money/task-cost.ts'
import type { FigureId } from './ids.ts'
import { fact, figure, fixed, type Use, use } from './use.ts'

type TaskId =
  | 'grade-cost'
  | 'band-cost'
  | 'harrow-cost'
  | 'screen-cost'
  | 'roll-cost'
  | 'round-cost'

/** A work that has a price, and the machine that does it. */
type Task = { readonly id: TaskId; readonly can: Capability; readonly time: FigureId }

const tasks: readonly Task[] = [
  { id: 'grade-cost', can: 'grade', time: 'grade.time' },
  { id: 'band-cost', can: 'grade', time: 'grade-band.time' },
  { id: 'harrow-cost', can: 'harrow', time: 'harrow.time' },
  { id: 'screen-cost', can: 'screen', time: 'screen.time' },
  { id: 'roll-cost', can: 'roll-tires', time: 'roll.time' },
  { id: 'round-cost', can: 'spray', time: 'round.time' },
]

/** A task costs something only where its machine has a price and fuel and labor have one too. */
const isPriced = ({ can }: Task, known: ReadonlySet<string>): boolean =>
  [`gear.${can}.cost`, `gear.${can}.fuel`, 'prices.fuel', 'prices.labor'].every((p) => known.has(p))

const taskUse = ({ id, can, time }: Task): Use =>
  use(id, taskCost, {
    time: figure(time),
    machines: fact(`gear.${can}.count`),
    rate: fact(`gear.${can}.cost`),
    fuelRate: fact(`gear.${can}.fuel`),
    fuelPrice: fact('prices.fuel'),
    labor: fact('prices.labor'),
  })

const raceDay = (known: ReadonlySet<string>): Use =>
  use('race-day', raceDayCost, {
    pullBack: figure('band-cost.cost'),
    harrow: figure('harrow-cost.cost'),
    harrowings: fixed(2, 'before-and-after-card'),
    round: figure('round-cost.cost'),
    rounds: figure('supply.rounds'),
    water: figure('supply.need'),
    waterPrice: known.has('prices.water') ? fact('prices.water') : fixed(0, 'no-water-price'),
    days: fact('race-days.count'),
    pullFuel: figure('band-cost.fuel'),
    harrowFuel: figure('harrow-cost.fuel'),
    roundFuel: figure('round-cost.fuel'),
    fuelPrice: fact('prices.fuel'),
  })

/** Costs of tasks, of a race day and of the fair, as far as prices are given. */
export function moneyUses(known: ReadonlySet<string>): readonly Use[] {
  const priced = tasks.filter((task) => isPriced(task, known))
  const has = new Set(priced.map((t) => t.id))
  const whole = (['band-cost', 'harrow-cost', 'round-cost'] as const).every((id) => has.has(id))
  const uses = priced.map(taskUse)
  return whole && known.has('race-days.count') ? [...uses, raceDay(known)] : uses
}
