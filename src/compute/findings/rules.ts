import { secondsPerDay } from '../../model/day.ts'
import type { FactPath } from '../../model/fact-spec.ts'
import type { ContactRole, FacilityFile } from '../../validate/schemas/facility.ts'
import type { Engine } from '../engine/engine.ts'
import type { FigureId, QuantityId } from '../uses/ids.ts'

/** What the rules look at. */
export type FindingsInput = {
  readonly engine: Engine
  readonly capabilities: ReadonlySet<string>
  readonly contactRoles: ReadonlySet<string>
  /** Entries that the facility file has under `emergency`. */
  readonly emergency: ReadonlySet<string>
  readonly hasClimate: boolean
  /** Build date, counted in days from 1970. */
  readonly today: number
}

/** A rule says when its finding applies; the words are content. */
export type FindingRule = {
  readonly id: string
  readonly holds: (input: FindingsInput) => boolean
  /** Facts whose lines in the facility file the finding points to. */
  readonly facts: readonly FactPath[]
  readonly figures: readonly FigureId[]
}

/** Both known, and the first larger than the second. */
const exceeds =
  (more: QuantityId, less: QuantityId) =>
  ({ engine }: FindingsInput): boolean => {
    const both = engine.siOfAll({ more, less })
    return both !== undefined && both.more > both.less * (1 + 1e-9)
  }

const lacks =
  (...capabilities: readonly string[]) =>
  (input: FindingsInput): boolean =>
    !capabilities.some((c) => input.capabilities.has(c))

/** Nobody among the contacts has this role. */
const nobody =
  (role: ContactRole) =>
  (input: FindingsInput): boolean =>
    !input.contactRoles.has(role)

/** The emergency page has an empty line for this. */
const unsaid =
  (entry: keyof NonNullable<FacilityFile['emergency']>) =>
  (input: FindingsInput): boolean =>
    !input.emergency.has(entry)

const outside =
  (path: FactPath, low: number, high: number) =>
  ({ engine }: FindingsInput): boolean => {
    const value = engine.si(path)
    return value !== undefined && (value < low || value > high)
  }

/** Known, but refused for a reason of its own. */
const refused =
  (name: FigureId) =>
  ({ engine }: FindingsInput): boolean => {
    const figure = engine.figure(name)
    return figure !== undefined && !figure.value.ok
  }

/** Cross-fall by levels against what the file states: further off than a level board would miss. */
const offBy =
  (found: FigureId, stated: FactPath, limit: number) =>
  ({ engine }: FindingsInput): boolean => {
    const both = engine.siOfAll({ found, stated })
    return both !== undefined && Math.abs(both.found - both.stated) > limit
  }

/** The cushion found is deeper (1) or thinner (−1) than wanted, by more than is either way good. */
const isOff =
  (side: 1 | -1) =>
  ({ engine }: FindingsInput): boolean => {
    const depth = engine.siOfAll({
      found: 'cushion.depth.found',
      target: 'cushion.depth.target',
      tolerance: 'cushion.depth.tolerance',
    })
    return depth !== undefined && side * (depth.found - depth.target) > depth.tolerance * (1 + 1e-9)
  }

/** Material is wanted, the fair is ahead, and the day to order it has gone by. */
function isOrderLate({ engine, today }: FindingsInput): boolean {
  const days = engine.siOfAll({
    fair: 'fair.day-number',
    before: 'practice.order-before',
    lead: 'delivery.lead-time',
  })
  const wanted = (engine.si('hard.mass') ?? 0) + (engine.si('grit.add') ?? 0) > 0
  if (!days || !wanted) return false
  return today <= days.fair && today > days.fair - (days.before + days.lead) / secondsPerDay
}

/** In the order in which they are looked at; the manual sorts by severity. */
export const findingRules: readonly FindingRule[] = [
  { id: 'no-grader', holds: lacks('grade'), facts: [], figures: [] },
  { id: 'no-harrow', holds: lacks('harrow', 'condition'), facts: [], figures: [] },
  { id: 'no-spray', holds: lacks('spray'), facts: [], figures: [] },
  { id: 'no-roller', holds: lacks('roll-tires', 'roll-drum'), facts: [], figures: [] },
  { id: 'no-tamper', holds: lacks('tamp'), facts: [], figures: [] },
  {
    id: 'seal-slow',
    holds: exceeds('seal.start-before', 'practice.seal.warning'),
    facts: ['gear.roll-tires.count', 'gear.screen.width', 'practice.seal.warning'],
    figures: ['seal.start-before'],
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
    id: 'uneven',
    holds: exceeds('practice.even-share', 'depths.share'),
    facts: ['cushion.depth.found', 'practice.even-share'],
    figures: ['depths.share', 'depths.spread'],
  },
  {
    id: 'cross-fall-off',
    holds: (input) =>
      offBy('levels.turns', 'oval.cross-fall.turns', 0.005)(input) ||
      offBy('levels.straights', 'oval.cross-fall.straights', 0.005)(input),
    facts: ['oval.cross-fall.straights', 'oval.cross-fall.turns'],
    figures: ['levels.straights', 'levels.turns'],
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
  { id: 'no-day', holds: refused('clock.start'), facts: ['race-days.first-post'], figures: [] },
  {
    id: 'early-start',
    holds: exceeds('daylight.dawn', 'clock.start'),
    facts: ['race-days.first-post'],
    figures: ['clock.start', 'daylight.dawn'],
  },
  {
    id: 'late-end',
    holds: (input) => exceeds('clock.done', 'daylight.dusk')(input) || refused('clock.done')(input),
    facts: ['race-days.first-post'],
    figures: ['daylight.dusk'],
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
    holds: exceeds('cycle.water', 'day-water.low'),
    facts: ['water.storage', 'water.recharge'],
    figures: ['day-water.low'],
  },
  {
    id: 'order-late',
    holds: isOrderLate,
    facts: ['delivery.lead-time', 'practice.order-before'],
    figures: ['hard.mass', 'grit.add'],
  },
  {
    id: 'budget-short',
    holds: exceeds('race-day.fair', 'prices.budget'),
    facts: ['prices.budget'],
    figures: ['race-day.fair'],
  },
  {
    id: 'cushion-deep',
    holds: isOff(1),
    facts: ['cushion.depth.found', 'cushion.depth.target'],
    figures: ['deep.excess'],
  },
  {
    id: 'cushion-thin',
    holds: isOff(-1),
    facts: ['cushion.depth.found', 'cushion.depth.target'],
    figures: ['hard.missing'],
  },
  {
    id: 'ridge-high',
    holds: ({ engine }) => {
      const ridge = engine.siOfAll({
        height: 'rail-ridge.height',
        limit: 'practice.rail-build-up',
      })
      return ridge !== undefined && ridge.height >= ridge.limit * (1 - 1e-9)
    },
    facts: ['rail-ridge.height'],
    figures: ['ridge.dam-width', 'ridge.lift-width'],
  },
  {
    id: 'grit-low',
    holds: exceeds('cushion.grit.target', 'cushion.grit.found'),
    facts: ['cushion.grit.found', 'cushion.grit.target'],
    figures: ['grit.add'],
  },
  // Straights about 1 to 4 % and turns 3 to 12.5 %: the span of published and remembered harness
  // tracks.
  {
    id: 'cross-fall-odd',
    holds: (input) =>
      outside('oval.cross-fall.straights', 0.01, 0.04)(input) ||
      outside('oval.cross-fall.turns', 0.03, 0.125)(input),
    facts: ['oval.cross-fall.straights', 'oval.cross-fall.turns'],
    figures: [],
  },
  { id: 'no-emergency-number', holds: unsaid('number'), facts: [], figures: [] },
  { id: 'no-address', holds: unsaid('address'), facts: [], figures: [] },
  { id: 'no-ambulance-gate', holds: unsaid('gate'), facts: [], figures: [] },
  { id: 'no-stop-racing', holds: unsaid('stops-racing'), facts: [], figures: [] },
  { id: 'no-ambulance', holds: nobody('ambulance'), facts: [], figures: [] },
  { id: 'no-veterinarian', holds: nobody('veterinarian'), facts: [], figures: [] },
  { id: 'no-fire', holds: nobody('fire'), facts: [], figures: [] },
  { id: 'no-superintendent', holds: nobody('superintendent'), facts: [], figures: [] },
  { id: 'no-meeting-point', holds: unsaid('meeting-point'), facts: [], figures: [] },
  { id: 'no-way-in', holds: unsaid('way'), facts: [], figures: [] },
  { id: 'no-coordinates', holds: unsaid('coordinates'), facts: [], figures: [] },
  { id: 'no-radio', holds: unsaid('radio'), facts: [], figures: [] },
  { id: 'no-hospital', holds: unsaid('hospital'), facts: [], figures: [] },
  { id: 'no-equine-clinic', holds: unsaid('equine-clinic'), facts: [], figures: [] },
  { id: 'no-first-aid', holds: unsaid('first-aid'), facts: [], figures: [] },
  { id: 'no-extinguishers', holds: unsaid('extinguishers'), facts: [], figures: [] },
  { id: 'no-defibrillator', holds: unsaid('defibrillator'), facts: [], figures: [] },
  { id: 'no-presiding-judge', holds: nobody('presiding-judge'), facts: [], figures: [] },
  { id: 'no-president', holds: nobody('president'), facts: [], figures: [] },
  { id: 'no-horse-ambulance', holds: nobody('horse-ambulance'), facts: [], figures: [] },
  { id: 'no-police', holds: nobody('police'), facts: [], figures: [] },
  { id: 'no-power-company', holds: nobody('power'), facts: [], figures: [] },
  { id: 'no-utility-locate', holds: nobody('utility-locate'), facts: [], figures: [] },
  { id: 'no-climate', holds: (input) => !input.hasClimate, facts: [], figures: [] },
  {
    id: 'no-race-days',
    holds: ({ engine }) => !engine.facts.has('race-days.count'),
    facts: [],
    figures: [],
  },
  {
    id: 'estimates',
    holds: ({ engine }) => [...engine.facts.values()].some((f) => f.provenance.kind === 'typical'),
    facts: [],
    figures: [],
  },
]
