import type { Capability } from '../../model/capability.ts'
import { raceDayCost, taskCost } from '../money/task-cost.ts'
import { type Binding, fact, figure, fixed, type Use, use } from './use.ts'

/** A task costs something only where its machine has a price and fuel and labor have one too. */
function task(
  number: number,
  id: string,
  can: Capability,
  time: Binding,
  title: string,
  known: ReadonlySet<string>,
): Use[] {
  const needed = [`gear.${can}.cost`, `gear.${can}.fuel`, 'prices.fuel', 'prices.labor']
  if (!needed.every((p) => known.has(p))) return []
  return [
    use(
      number,
      id,
      taskCost,
      {
        time,
        machines: fact(`gear.${can}.count`),
        rate: fact(`gear.${can}.cost`),
        fuelRate: fact(`gear.${can}.fuel`),
        fuelPrice: fact('prices.fuel'),
        labor: fact('prices.labor'),
      },
      { title },
    ),
  ]
}

/** Costs of tasks, of a race day and of the fair, as far as prices are given. */
export function moneyUses(known: ReadonlySet<string>): readonly Use[] {
  const tasks = [
    ...task(
      70,
      'grade-cost',
      'grade',
      figure('grade.time'),
      'What grading the whole width costs',
      known,
    ),
    ...task(
      71,
      'band-cost',
      'grade',
      figure('grade-band.time'),
      'What pulling back the strip at the rail costs',
      known,
    ),
    ...task(
      72,
      'harrow-cost',
      'harrow',
      figure('harrow.time'),
      'What harrowing the whole width costs',
      known,
    ),
    ...task(
      73,
      'screen-cost',
      'screen',
      figure('screen.time'),
      'What flattening with the screen costs',
      known,
    ),
    ...task(
      74,
      'roll-cost',
      'roll-tires',
      figure('roll.time'),
      'What rolling with trucks costs',
      known,
    ),
    ...task(
      75,
      'round-cost',
      'spray',
      figure('round.time'),
      'What one round of water costs',
      known,
    ),
  ]
  const has = new Set(tasks.map((t) => t.id))
  if (
    !['band-cost', 'harrow-cost', 'round-cost'].every((id) => has.has(id)) ||
    !known.has('race-days.count')
  )
    return tasks
  const day = use(78, 'race-day', raceDayCost, {
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
  return [...tasks, day]
}
