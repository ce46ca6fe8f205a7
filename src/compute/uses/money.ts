import type { Capability } from '../../model/capability.ts'
import { haul } from '../money/haul.ts'
import { machineHour } from '../money/machine-hour.ts'
import { raceDayCost } from '../money/race-day-cost.ts'
import { taskCost } from '../money/task-cost.ts'
import { tractorFuel } from '../money/tractor-fuel.ts'
import { tractorPower } from '../money/tractor-power.ts'
import type { FigureId } from './ids.ts'
import { type Binding, fact, figure, fixed, type Use, use } from './use.ts'

type TaskId =
  | 'grade-cost'
  | 'band-cost'
  | 'harrow-cost'
  | 'screen-cost'
  | 'roll-cost'
  | 'round-cost'
  | 'load-cost'
  | 'haul-cost'

/** A work that has a price, and the machine that does it. */
type Task = { readonly id: TaskId; readonly can: Capability; readonly time: FigureId }

const tasksOf = (known: ReadonlySet<string>): readonly Task[] => [
  { id: 'grade-cost', can: 'grade', time: 'grade.time' },
  known.has('gear.draw.width')
    ? { id: 'band-cost', can: 'draw', time: 'grade-band.time' }
    : { id: 'band-cost', can: 'harrow', time: 'draw-in.time' },
  { id: 'harrow-cost', can: 'harrow', time: 'harrow.time' },
  { id: 'screen-cost', can: 'screen', time: 'screen.time' },
  { id: 'roll-cost', can: 'roll-tires', time: 'roll.time' },
  { id: 'round-cost', can: 'spray', time: 'round.time' },
  { id: 'load-cost', can: 'load', time: 'deep.loading' },
  { id: 'haul-cost', can: 'haul', time: 'deep.loading' },
]

/** Machines whose hour, and whose fuel, is worked out where nobody states it. */
const owned = ['grade', 'harrow', 'screen', 'spray'] as const
const pulled = ['grade', 'harrow', 'screen'] as const

const worksOutHour = (can: Capability, known: ReadonlySet<string>): boolean =>
  !known.has(`gear.${can}.cost`) &&
  known.has(`gear.${can}.price`) &&
  known.has(`gear.${can}.hours`) &&
  owned.some((o) => o === can)

const worksOutFuel = (can: Capability, known: ReadonlySet<string>): boolean =>
  !known.has(`gear.${can}.fuel`) && known.has(`gear.${can}.power`) && pulled.some((o) => o === can)

/** What an hour of a machine costs: as stated, else worked out from its price. */
function hourOf(can: Capability, known: ReadonlySet<string>): Binding | undefined {
  if (can === 'spray' && known.has('water-trucks.cost')) return fact('water-trucks.cost')
  if (known.has(`gear.${can}.cost`)) return fact(`gear.${can}.cost`)
  const own = owned.find((o) => o === can && worksOutHour(can, known))
  return own && figure(`${own}-hour.hour`)
}

/** What a machine burns in an hour: as stated, else worked out from its power. */
function fuelOf(can: Capability, known: ReadonlySet<string>): Binding | undefined {
  if (can === 'spray' && known.has('water-trucks.fuel')) return fact('water-trucks.fuel')
  if (known.has(`gear.${can}.fuel`)) return fact(`gear.${can}.fuel`)
  const own = pulled.find((o) => o === can && worksOutFuel(can, known))
  return own && figure(`${own}-fuel.rate`)
}

/** Hours and fuel of machines that are worked out. */
const machineUses = (known: ReadonlySet<string>): readonly Use[] => [
  ...owned
    .filter((can) => worksOutHour(can, known))
    .map((can) =>
      use(`${can}-hour`, machineHour, {
        price: fact(`gear.${can}.price`),
        left: fact('practice.machine.left'),
        interest: fact('practice.machine.interest'),
        years: fact('practice.machine.years'),
        hours: fact(`gear.${can}.hours`),
        keeping: fact('practice.machine.keeping'),
        rf1: fact('practice.machine.repair-size'),
        rf2: fact('practice.machine.repair-rise'),
      }),
    ),
  ...pulled
    .filter((can) => worksOutFuel(can, known))
    .map((can) => use(`${can}-fuel`, tractorFuel, { power: fact(`gear.${can}.power`) })),
  ...(known.has('gear.harrow.width')
    ? [
        use('harrow-power', tractorPower, {
          width: fact('gear.harrow.width'),
          draft: fact('practice.draft'),
          speed: fact('gear.harrow.speed'),
          traction: fact('practice.traction'),
        }),
      ]
    : []),
]

/** A task costs something only where its machine has a price and fuel and labor have one too. */
const isPriced = ({ can }: Task, known: ReadonlySet<string>): boolean =>
  hourOf(can, known) !== undefined &&
  fuelOf(can, known) !== undefined &&
  ['prices.fuel', 'prices.labor'].every((p) => known.has(p))

const taskUse = ({ id, can, time }: Task, known: ReadonlySet<string>): Use =>
  use(id, taskCost, {
    time: figure(time),
    machines: can === 'spray' ? figure('fleet.all') : fact(`gear.${can}.count`),
    rate: hourOf(can, known) ?? fact(`gear.${can}.cost`),
    fuelRate: fuelOf(can, known) ?? fact(`gear.${can}.fuel`),
    fuelPrice: fact('prices.fuel'),
    labor: fact('prices.labor'),
    tax: fact('prices.payroll-tax'),
  })

/** What a task's machines cost, or nothing where nobody knows a price. */
const ofTask = (
  id: 'band-cost' | 'harrow-cost' | 'round-cost',
  output: 'machine' | 'fuel',
  priced: ReadonlySet<TaskId>,
): Binding => (priced.has(id) ? figure(`${id}.${output}`) : fixed(0, 'no-price-known'))

/** Water that costs something, be it nothing: without a price none is counted. */
function waterOf(known: ReadonlySet<string>): Binding {
  if (!known.has('gear.spray.tank')) return fixed(0, 'no-water-truck')
  return known.has('prices.water') ? figure('supply.need') : fixed(0, 'no-water-price')
}

const raceDay = (known: ReadonlySet<string>, priced: ReadonlySet<TaskId>): Use => {
  const harrows = known.has('gear.harrow.width')
  return use('race-day', raceDayCost, {
    crew: figure('crew-day.all'),
    wage: known.has('prices.labor') ? fact('prices.labor') : fixed(0, 'no-price-known'),
    tax: fact('prices.payroll-tax'),
    pullBack: ofTask('band-cost', 'machine', priced),
    harrow: ofTask('harrow-cost', 'machine', priced),
    harrowings: fixed(2, 'before-and-after-card'),
    harrowLaps: harrows ? figure('harrow.laps') : fixed(1, 'nothing-harrows'),
    lapsBetween: harrows ? figure('between.laps') : fixed(0, 'nothing-harrows'),
    lapsInBreak: harrows ? figure('break.laps') : fixed(0, 'nothing-harrows'),
    breaks: figure('clock.breaks'),
    races: fact('race-days.races'),
    round: ofTask('round-cost', 'machine', priced),
    roundLoads: known.has('gear.spray.tank') ? figure('round.loads') : fixed(1, 'no-water-truck'),
    loads: known.has('gear.spray.tank') ? figure('supply.loads') : fixed(0, 'no-water-truck'),
    water: waterOf(known),
    waterPrice: known.has('prices.water') ? fact('prices.water') : fixed(0, 'no-water-price'),
    days: fact('race-days.count'),
    pullFuel: ofTask('band-cost', 'fuel', priced),
    harrowFuel: ofTask('harrow-cost', 'fuel', priced),
    roundFuel: ofTask('round-cost', 'fuel', priced),
    fuelPrice: known.has('prices.fuel') ? fact('prices.fuel') : fixed(0, 'no-price-known'),
  })
}

/** Moving stone between heap and track, where there is a truck with a bed and a loader. */
const haulUses = (known: ReadonlySet<string>): readonly Use[] =>
  known.has('gear.haul.bed') && known.has('gear.load.bucket')
    ? [
        use('haul', haul, {
          bed: fact('gear.haul.bed'),
          bucket: fact('gear.load.bucket'),
          fill: fact('practice.haul.fill'),
          weight: fact('cushion.unit-weight.loose'),
          bucketTime: fact('practice.haul.bucket'),
          lap: figure('rail.length'),
          speed: fact('practice.haul.speed'),
          dump: fact('practice.haul.dump'),
          spot: fact('practice.haul.spot'),
          working: fact('practice.haul.working'),
          trucks: fact('gear.haul.count'),
        }),
      ]
    : []

/** Costs of tasks, of a race day and of the fair, as far as prices are given. */
export function moneyUses(known: ReadonlySet<string>): readonly Use[] {
  const priced = tasksOf(known).filter((task) => isPriced(task, known))
  const has = new Set(priced.map((t) => t.id))
  const uses = [...machineUses(known), ...haulUses(known), ...priced.map((t) => taskUse(t, known))]
  const dated = ['race-days.count', 'race-days.first-post']
  return dated.every((path) => known.has(path)) ? [...uses, raceDay(known, has)] : uses
}
