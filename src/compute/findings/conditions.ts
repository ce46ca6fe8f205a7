import type { Capability } from '../../model/capability.ts'
import { secondsPerDay } from '../../model/day.ts'
import type { FactPath } from '../../model/fact-spec.ts'
import { isEstimated } from '../../model/figure.ts'
import type { ContactRole } from '../../validate/schemas/contacts.ts'
import type { FacilityFile } from '../../validate/schemas/facility.ts'
import type { Engine } from '../engine/engine.ts'
import type { FigureId, QuantityId } from '../uses/ids.ts'

/** What a rule looks at. */
export type FindingsInput = {
  readonly engine: Engine
  /** Race days on the morrow of the ones that the engine answers for. */
  readonly morrows: readonly Engine[]
  readonly capabilities: ReadonlySet<string>
  readonly contactRoles: ReadonlySet<string>
  /** Entries that the facility file has under `emergency`. */
  readonly emergency: ReadonlySet<string>
  /** Lights reach all of the track. */
  readonly lit: boolean
  /** Build date, counted in days from 1970. */
  readonly today: number
}

export type Condition = (input: FindingsInput) => boolean

/** What is within this share of a limit has not passed it. */
const slack = 1e-9

/** Both known, and the first larger than the second. */
export const exceeds =
  (more: QuantityId, less: QuantityId): Condition =>
  ({ engine }) => {
    const both = engine.siOfAll({ more, less })
    return both !== undefined && both.more > both.less * (1 + slack)
  }

/** Both known, and the first as large as the second or larger. */
export const reaches =
  (value: QuantityId, limit: QuantityId): Condition =>
  ({ engine }) => {
    const both = engine.siOfAll({ value, limit })
    return both !== undefined && both.value >= both.limit * (1 - slack)
  }

/** Both known, and apart by more than a limit, SI. */
export const differ =
  (found: QuantityId, stated: QuantityId, limit: number): Condition =>
  ({ engine }) => {
    const both = engine.siOfAll({ found, stated })
    return both !== undefined && Math.abs(both.found - both.stated) > limit
  }

/** Known, and not from a lowest to a highest believable value, SI. */
export const outside =
  (path: FactPath, low: number, high: number): Condition =>
  ({ engine }) => {
    const value = engine.si(path)
    return value !== undefined && (value < low || value > high)
  }

/** Known, and above zero. */
export const positive =
  (id: QuantityId): Condition =>
  ({ engine }) =>
    (engine.si(id) ?? 0) > 0

/** Worked out, but refused for a reason of its own. */
export const refused =
  (id: FigureId): Condition =>
  ({ engine }) =>
    engine.figure(id)?.value.ok === false

/** There is no such figure here. */
export const noFigure =
  (id: FigureId): Condition =>
  ({ engine }) =>
    engine.figure(id) === undefined

/** Nobody has given this, and nothing stands in for it. */
export const notGiven =
  (path: FactPath): Condition =>
  ({ engine }) =>
    !engine.facts.has(path)

/** No machine here can do any of these. */
export const lacks =
  (...work: readonly Capability[]): Condition =>
  ({ capabilities }) =>
    !work.some((c) => capabilities.has(c))

/** Nobody among the contacts has this role. */
export const nobody =
  (role: ContactRole): Condition =>
  ({ contactRoles }) =>
    !contactRoles.has(role)

/** The emergency page has an empty line for this. */
export const unsaid =
  (entry: keyof NonNullable<FacilityFile['emergency']>): Condition =>
  ({ emergency }) =>
    !emergency.has(entry)

export const anyOf =
  (...conditions: readonly Condition[]): Condition =>
  (input) =>
    conditions.some((holds) => holds(input))

export const allOf =
  (...conditions: readonly Condition[]): Condition =>
  (input) =>
    conditions.every((holds) => holds(input))

/** The last race ends on the day after its date, or later than any clock says here. */
export const pastMidnight: Condition = (input) =>
  refused('clock.after')(input) || (input.engine.si('clock.after') ?? 0) >= secondsPerDay

/**
 * One crew works this day and the one that follows, and rests too little between them. Where a day
 * has an early and a late crew, its people are others.
 */
export const restIsShort: Condition = ({ engine, morrows }) => {
  const day = engine.siOfAll({
    done: 'clock.done',
    shifts: 'clock.shifts',
    rest: 'practice.rest',
  })
  if (!day || day.shifts > 1) return false
  return morrows.some((morrow) => {
    const next = morrow.siOfAll({ start: 'clock.start', shifts: 'clock.shifts' })
    if (!next || next.shifts > 1) return false
    return secondsPerDay - day.done + next.start < day.rest * (1 - slack)
  })
}

/** Holds where no lights reach the track. */
export const unlit =
  (condition: Condition): Condition =>
  (input) =>
    !input.lit && condition(input)

/** The cushion found is deeper or thinner than wanted, by more than is either way good. */
export const cushionIs =
  (wrong: 'deep' | 'thin'): Condition =>
  ({ engine }) => {
    const depth = engine.siOfAll({
      found: 'cushion.depth.found',
      target: 'cushion.depth.target',
      tolerance: 'cushion.depth.tolerance',
    })
    if (!depth) return false
    const off = wrong === 'deep' ? depth.found - depth.target : depth.target - depth.found
    return off > depth.tolerance * (1 + slack)
  }

/** Material is wanted, the fair is ahead, and the day to order it has gone by. */
export const orderIsLate: Condition = ({ engine, today }) => {
  const days = engine.siOfAll({
    fair: 'fair.day',
    before: 'practice.order-before',
    lead: 'delivery.lead-time',
  })
  const wanted = (engine.si('hard.mass') ?? 0) + (engine.si('grit.add') ?? 0) > 0
  if (!days || !wanted) return false
  return today <= days.fair && today > days.fair - (days.before + days.lead) / secondsPerDay
}

/** Some value stands in for what nobody has measured. */
export const somethingIsEstimated: Condition = ({ engine }) =>
  [...engine.facts.values()].some((f) => isEstimated(f.provenance))
