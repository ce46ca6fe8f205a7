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
type Task = {
  readonly number: number
  readonly id: TaskId
  readonly can: Capability
  readonly time: FigureId
  readonly title: string
}

const tasks: readonly Task[] = [
  {
    number: 70,
    id: 'grade-cost',
    can: 'grade',
    time: 'grade.time',
    title: 'What grading the whole width costs',
  },
  {
    number: 71,
    id: 'band-cost',
    can: 'grade',
    time: 'grade-band.time',
    title: 'What pulling back the strip at the rail costs',
  },
  {
    number: 72,
    id: 'harrow-cost',
    can: 'harrow',
    time: 'harrow.time',
    title: 'What harrowing the whole width costs',
  },
  {
    number: 73,
    id: 'screen-cost',
    can: 'screen',
    time: 'screen.time',
    title: 'What flattening with the screen costs',
  },
  {
    number: 74,
    id: 'roll-cost',
    can: 'roll-tires',
    time: 'roll.time',
    title: 'What rolling with trucks costs',
  },
  {
    number: 75,
    id: 'round-cost',
    can: 'spray',
    time: 'round.time',
    title: 'What one round of water costs',
  },
]

/** A task costs something only where its machine has a price and fuel and labor have one too. */
const isPriced = ({ can }: Task, known: ReadonlySet<string>): boolean =>
  [`gear.${can}.cost`, `gear.${can}.fuel`, 'prices.fuel', 'prices.labor'].every((p) => known.has(p))

const taskUse = ({ number, id, can, time, title }: Task): Use =>
  use(
    number,
    id,
    taskCost,
    {
      time: figure(time),
      machines: fact(`gear.${can}.count`),
      rate: fact(`gear.${can}.cost`),
      fuelRate: fact(`gear.${can}.fuel`),
      fuelPrice: fact('prices.fuel'),
      labor: fact('prices.labor'),
    },
    { title },
  )

const raceDay = (known: ReadonlySet<string>): Use =>
  use(78, 'race-day', raceDayCost, {
    pullBack: figure('band-cost.cost'),
    harrow: figure('harrow-cost.cost'),
    harrowings: fixed(2, 'before the card and after it'),
    round: figure('round-cost.cost'),
    rounds: figure('supply.rounds'),
    water: figure('supply.need'),
    waterPrice: known.has('prices.water')
      ? fact('prices.water')
      : fixed(0, 'no price of water is given'),
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
