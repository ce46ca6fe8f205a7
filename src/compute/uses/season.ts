import type { FactPath } from '../../model/fact-spec.ts'
import {
  evenCost,
  materialCost,
  seasonCost,
  seasonCostUnset,
  takeOffCost,
} from '../money/season-cost.ts'
import { wheelDays } from '../people/wheel-days.ts'
import { graderBooking } from '../repairs/grader-booking.ts'
import type { FigureId } from './ids.ts'
import { type Binding, fact, figure, figureOr, fixed, type Use, use } from './use.ts'

/** The grader's days, where material is taken off before it shapes. */
const bookingUses = (known: ReadonlySet<string>): readonly Use[] =>
  known.has('gear.grade.width')
    ? [
        use('booking', graderBooking, {
          takeOff: figure('deep.time'),
          shaping: figure('grade.time'),
          longest: fact('practice.long-day'),
          booked: known.has('grader.days') ? fact('grader.days') : fixed(0, 'no-days-booked'),
        }),
      ]
    : []

const machinePrices = ['gear.draw.cost', 'gear.draw.fuel', 'prices.fuel'] as const

/** Cures that are made of work and material with a price. */
function cureUses(known: ReadonlySet<string>): readonly Use[] {
  const all = (...paths: readonly FactPath[]): boolean => paths.every((p) => known.has(p))
  const blade = all(...machinePrices)
  const orNothing = (path: (typeof machinePrices)[number]): Binding =>
    blade ? fact(path) : fixed(0, 'no-price-known')
  return [
    ...((['grade', 'load', 'haul'] as const).every((c) =>
      all(`gear.${c}.cost`, `gear.${c}.fuel`),
    ) && all('prices.fuel', 'prices.labor')
      ? [
          use('deep-cost', takeOffCost, {
            blading: figure('grade-cost.cost'),
            loading: figure('load-cost.cost'),
            hauling: figure('haul-cost.cost'),
          }),
        ]
      : []),
    ...(all('prices.grit')
      ? [
          use('grit-cost', materialCost, {
            order: figure('grit.order'),
            price: fact('prices.grit'),
          }),
        ]
      : []),
    ...(all('prices.labor')
      ? [
          use('even-cost', evenCost, {
            time: fact('practice.ten-days.move'),
            people: fixed(2, 'one-drives-one-rakes'),
            wage: fact('prices.labor'),
            tax: fact('prices.payroll-tax'),
            rate: orNothing('gear.draw.cost'),
            fuelRate: orNothing('gear.draw.fuel'),
            fuelPrice: orNothing('prices.fuel'),
            share: figure('depths.share'),
            enough: fact('practice.even-share'),
          }),
        ]
      : []),
  ]
}

const orNone = (id: FigureId): Binding => figureOr(id, 'not-here-or-no-price')

function season(known: ReadonlySet<string>): Use {
  const costs = {
    fair: orNone('race-day.fair'),
    before: fact('practice.prepare-before'),
    harrow: orNone('harrow-cost.cost'),
    round: orNone('round-cost.cost'),
    water: figureOr('round.water', 'no-water-truck'),
    waterPrice: known.has('prices.water') ? fact('prices.water') : fixed(0, 'no-water-price'),
    shaping: orNone('grade-cost.cost'),
    takeOff: orNone('deep-cost.cost'),
    material: orNone('hard.cost'),
    grit: orNone('grit-cost.cost'),
    moving: orNone('even-cost.cost'),
  }
  return known.has('prices.budget')
    ? use('season', seasonCost, { ...costs, budget: fact('prices.budget') })
    : use('season', seasonCostUnset, costs)
}

/** Days that a new driver takes, by the everyday work of the machine. */
const wheelUses = (known: ReadonlySet<string>): readonly Use[] => {
  const wheel = fact('practice.training-wheel')
  return [
    ...(known.has('gear.harrow.width')
      ? [use('wheel-harrow', wheelDays, { wheel, daily: figure('harrow.time') })]
      : []),
    ...(known.has('gear.spray.tank')
      ? [use('wheel-truck', wheelDays, { wheel, daily: figure('round.alone') })]
      : []),
  ]
}

/** What is settled before the season: grader's days, new drivers' days, what cures and the season cost. */
export const seasonUses = (known: ReadonlySet<string>): readonly Use[] => [
  ...bookingUses(known),
  ...wheelUses(known),
  ...cureUses(known),
  ...(known.has('race-days.count') ? [season(known)] : []),
]
