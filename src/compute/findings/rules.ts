import { secondsPerDay } from '../../model/day.ts'
import type { FactPath } from '../../model/fact-spec.ts'
import type { FigureId } from '../uses/ids.ts'
import {
  allOf,
  anyOf,
  type Condition,
  cushionIs,
  differ,
  exceeds,
  lacks,
  nobody,
  noFigure,
  notGiven,
  orderIsLate,
  outside,
  pastMidnight,
  positive,
  reaches,
  refused,
  restIsShort,
  somethingIsEstimated,
  unlit,
  unsaid,
} from './conditions.ts'

/** A rule says when its finding applies; its words stand under the same id in content/findings.yaml. */
export type FindingRule = {
  readonly id: string
  readonly holds: Condition
  /** Facts whose lines in the facility file the finding points to. */
  readonly facts?: readonly FactPath[]
  /** Figures that it shows. */
  readonly figures?: readonly FigureId[]
}

/** In the order in which they are looked at; the manual sorts by severity. */
export const findingRules: readonly FindingRule[] = [
  { id: 'no-grader', holds: lacks('grade') },
  { id: 'no-blade', holds: lacks('draw') },
  { id: 'no-harrow', holds: lacks('harrow', 'condition') },
  { id: 'no-spray', holds: lacks('spray') },
  { id: 'no-roller', holds: lacks('roll-tires', 'roll-drum') },
  { id: 'no-tamper', holds: lacks('tamp') },
  {
    id: 'seal-slow',
    holds: exceeds('seal.start-before', 'practice.seal.warning'),
    facts: ['gear.roll-tires.count', 'gear.screen.width', 'practice.seal.warning'],
    figures: ['seal.start-before'],
  },
  {
    id: 'seal-crew',
    holds: exceeds('seal.need', 'crew.people'),
    facts: ['crew.people', 'gear.roll-tires.count'],
    figures: ['seal.need', 'seal.time'],
  },
  {
    id: 'water-short',
    holds: exceeds('supply.hours', 'water.hours'),
    facts: ['water.fill-flow', 'water.hours'],
    figures: ['supply.need', 'supply.hours'],
  },
  {
    id: 'storage-short',
    holds: exceeds('supply.need', 'water.storage'),
    facts: ['water.storage'],
    figures: ['supply.need'],
  },
  {
    id: 'round-slow',
    holds: exceeds('round.time', 'race-days.interval'),
    facts: ['gear.spray.tank', 'gear.spray.flow', 'water.fill-flow', 'race-days.interval'],
    figures: ['round.time'],
  },
  {
    id: 'harrow-slow',
    holds: exceeds('harrow.time', 'race-days.interval'),
    facts: ['gear.harrow.width', 'gear.harrow.speed', 'race-days.interval'],
    figures: ['harrow.time'],
  },
  {
    id: 'tractor-small',
    holds: exceeds('harrow-power.need', 'gear.harrow.power'),
    facts: ['gear.harrow.power', 'gear.harrow.width'],
    figures: ['harrow-power.need'],
  },
  {
    id: 'no-lap-between',
    holds: exceeds('between.lap', 'between.free'),
    facts: ['race-days.interval', 'gear.harrow.speed'],
    figures: ['between.needed'],
  },
  {
    id: 'grader-short',
    holds: positive('booking.more'),
    facts: ['grader.days', 'practice.long-day'],
    figures: ['booking.work', 'booking.days', 'booking.more'],
  },
  {
    id: 'grader-late',
    holds: allOf(positive('grader.days'), positive('fair.day'), notGiven('grader.before')),
    facts: ['grader.days'],
  },
  {
    // Horses settle what it opens in days, not in hours; what is shaped in another month is worn again.
    id: 'grader-off',
    holds: outside('grader.before', 3 * secondsPerDay, 31 * secondsPerDay),
    facts: ['grader.days'],
  },
  {
    id: 'uneven',
    holds: exceeds('practice.even-share', 'depths.share'),
    facts: ['cushion.depth.found', 'practice.even-share'],
    figures: ['depths.share', 'depths.spread'],
  },
  {
    id: 'cross-fall-off',
    // Further off than a level board would miss.
    holds: anyOf(
      differ('levels.turns', 'oval.cross-fall.turns', 0.005),
      differ('levels.straights', 'oval.cross-fall.straights', 0.005),
    ),
    facts: ['oval.cross-fall.straights', 'oval.cross-fall.turns'],
    figures: ['levels.straights', 'levels.turns'],
  },
  {
    id: 'levels-in-base',
    holds: positive('levels.base'),
    facts: ['oval.cross-fall.straights', 'oval.cross-fall.turns'],
    figures: ['levels.base'],
  },
  {
    id: 'fines-high',
    holds: exceeds('sieve.fines', 'practice.fines-limit'),
    facts: ['cushion.grit.found', 'practice.fines-limit'],
    figures: ['sieve.fines'],
  },
  {
    id: 'base-loose',
    holds: exceeds('practice.packing', 'packing.lowest'),
    facts: ['base.proctor.highest', 'practice.packing'],
    figures: ['packing.lowest', 'packing.relative'],
  },
  {
    id: 'rail-line-off',
    holds: exceeds('walked.share', 'practice.lap-tolerance'),
    facts: ['rail-line.length', 'oval.lap'],
    figures: ['walked.off', 'walked.lap'],
  },
  { id: 'no-day', holds: refused('clock.start'), facts: ['race-days.first-post'] },
  {
    id: 'early-start',
    holds: unlit(exceeds('daylight.dawn', 'clock.start')),
    facts: ['race-days.first-post'],
    figures: ['clock.start', 'daylight.dawn'],
  },
  {
    id: 'late-end',
    holds: unlit(exceeds('clock.after', 'daylight.dusk')),
    facts: ['race-days.first-post'],
    figures: ['daylight.dusk'],
  },
  { id: 'past-midnight', holds: pastMidnight, facts: ['race-days.first-post'] },
  {
    id: 'evening-dark',
    holds: unlit(allOf(exceeds('daylight.dusk', 'clock.after'), refused('clock.watered'))),
    facts: ['race-days.first-post'],
    figures: ['clock.after', 'daylight.dusk'],
  },
  {
    id: 'rota-short',
    holds: exceeds('crew-day.places', 'crew.race-day'),
    facts: ['crew.race-day', 'practice.long-day'],
    figures: ['crew-day.places'],
  },
  {
    id: 'rest-short',
    holds: restIsShort,
    facts: ['race-days.first-post', 'practice.rest'],
    figures: ['clock.done'],
  },
  {
    id: 'day-long',
    holds: exceeds('clock.long', 'practice.long-day'),
    facts: ['race-days.first-post', 'practice.long-day'],
    figures: ['clock.long'],
  },
  {
    id: 'crew-short',
    holds: exceeds('crew-day.each', 'practice.long-day'),
    facts: ['crew.race-day', 'practice.long-day'],
    figures: ['crew-day.each'],
  },
  {
    id: 'dries-out',
    holds: exceeds('day-water.behind', 'practice.water.pass-depth'),
    facts: ['gear.spray.tank', 'water.fill-flow', 'race-days.interval'],
    figures: ['day-water.behind'],
  },
  {
    id: 'store-runs-dry',
    holds: anyOf(exceeds('cycle.water', 'day-water.low'), exceeds('store.drawn', 'store.hand')),
    facts: ['water.storage', 'water.recharge'],
    figures: ['store.drawn', 'store.hand'],
  },
  {
    id: 'order-late',
    holds: orderIsLate,
    facts: ['delivery.lead-time', 'practice.order-before'],
    figures: ['hard.order', 'grit.order'],
  },
  {
    id: 'budget-short',
    holds: exceeds('race-day.fair', 'prices.budget'),
    facts: ['prices.budget'],
    figures: ['race-day.fair'],
  },
  {
    id: 'cost-incomplete',
    holds: allOf(
      positive('race-day.hours'),
      anyOf(
        noFigure('band-cost.cost'),
        noFigure('harrow-cost.cost'),
        noFigure('round-cost.cost'),
        notGiven('prices.labor'),
        notGiven('prices.water'),
      ),
    ),
    facts: ['prices.labor', 'prices.water'],
    figures: ['race-day.hours'],
  },
  {
    id: 'cushion-deep',
    holds: cushionIs('deep'),
    facts: ['cushion.depth.found', 'cushion.depth.target'],
    figures: ['deep.excess'],
  },
  {
    id: 'cushion-thin',
    holds: cushionIs('thin'),
    facts: ['cushion.depth.found', 'cushion.depth.target'],
    figures: ['hard.missing'],
  },
  {
    id: 'ridge-high',
    holds: reaches('rail-ridge.height', 'practice.rail-build-up'),
    facts: ['rail-ridge.height'],
    figures: ['ridge.dam-width', 'ridge.lift-width'],
  },
  {
    id: 'grit-low',
    holds: exceeds('cushion.grit.target', 'cushion.grit.found'),
    facts: ['cushion.grit.found', 'cushion.grit.target'],
    figures: ['grit.order'],
  },
  // Straights about 1 to 4 % and turns 3 to 12.5 %: the span of published and remembered harness
  // tracks.
  {
    id: 'cross-fall-odd',
    holds: anyOf(
      outside('oval.cross-fall.straights', 0.01, 0.04),
      outside('oval.cross-fall.turns', 0.03, 0.125),
    ),
    facts: ['oval.cross-fall.straights', 'oval.cross-fall.turns'],
  },
  { id: 'no-emergency-number', holds: unsaid('number') },
  { id: 'no-address', holds: unsaid('address') },
  { id: 'no-ambulance-gate', holds: unsaid('gate') },
  { id: 'no-stop-racing', holds: unsaid('stops-racing') },
  { id: 'no-ambulance', holds: nobody('ambulance') },
  { id: 'no-veterinarian', holds: nobody('veterinarian') },
  { id: 'no-fire', holds: nobody('fire') },
  { id: 'no-superintendent', holds: nobody('superintendent') },
  { id: 'no-meeting-point', holds: unsaid('meeting-point') },
  { id: 'no-way-in', holds: unsaid('way') },
  { id: 'no-coordinates', holds: unsaid('coordinates') },
  { id: 'no-radio', holds: unsaid('radio') },
  { id: 'no-hospital', holds: unsaid('hospital') },
  { id: 'no-equine-clinic', holds: unsaid('equine-clinic') },
  { id: 'no-first-aid', holds: unsaid('first-aid') },
  { id: 'no-extinguishers', holds: unsaid('extinguishers') },
  { id: 'no-defibrillator', holds: unsaid('defibrillator') },
  { id: 'no-presiding-judge', holds: nobody('presiding-judge') },
  { id: 'no-president', holds: nobody('president') },
  { id: 'no-horse-ambulance', holds: nobody('horse-ambulance') },
  { id: 'no-police', holds: nobody('police') },
  { id: 'no-power-company', holds: nobody('power') },
  { id: 'no-utility-locate', holds: nobody('utility-locate') },
  { id: 'no-climate', holds: notGiven('climate.tmax') },
  {
    id: 'no-race-days',
    holds: notGiven('race-days.count'),
  },
  {
    id: 'estimates',
    holds: somethingIsEstimated,
  },
]
