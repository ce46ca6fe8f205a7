import type { Engine } from '../compute/engine/engine.ts'
import type { FindingsInput } from '../compute/findings/conditions.ts'
import { type FindingRule, findingRules } from '../compute/findings/rules.ts'
import { dayNumber } from '../model/day.ts'
import type { Finding } from '../model/manual/finding.ts'
import { namesIn } from '../model/placeholders.ts'
import type { FindingText } from '../validate/schemas/library.ts'
import { type ComposeContext, filled, itemsOf, type ManualParts } from './context.ts'
import { guessesBehind } from './guesses.ts'
import { type DayGroup, raceDayGroups } from './schedules/race-day-groups.ts'

const rank = { serious: 0, plan: 1, note: 2 } as const

const inputOf = ({ context, morrows }: Pick<Case, 'context' | 'morrows'>): FindingsInput => {
  const { engine, facility, here, date } = context
  return {
    engine,
    morrows,
    capabilities: here.capabilities,
    contactRoles: new Set((facility.file.contacts ?? []).map((c) => c.role)),
    emergency: new Set(Object.keys(facility.file.emergency ?? {})),
    lit: facility.file.lights === true,
    today: dayNumber(date),
  }
}

/** What a rule is held against: the facility, or one of its race days. */
type Case = {
  readonly dates: string | undefined
  readonly context: ComposeContext
  readonly morrows: readonly Engine[]
}

/** The facility with its fullest day first, then each race day that differs. */
const casesOf = (context: ComposeContext): readonly Case[] => [
  { dates: undefined, context, morrows: [] },
  ...raceDayGroups(context),
]

/** A rule that holds, and the first case in which it does. */
type Held = { readonly rule: FindingRule; readonly by: Case }

const heldBy = new WeakMap<ManualParts, readonly Held[]>()

/** Rules that hold here or on one of the race days; worked out once for a manual. */
function held(context: ComposeContext): readonly Held[] {
  const known = heldBy.get(context.parts)
  if (known) return known
  const cases = casesOf(context).map((by) => ({ by, input: inputOf(by) }))
  const all = findingRules.flatMap((rule) => {
    const found = cases.find(({ input }) => rule.holds(input))
    return found ? [{ rule, by: found.by }] : []
  })
  heldBy.set(context.parts, all)
  return all
}

/**
 * The race day on which the first of some findings holds, where that is not the fullest one: what is
 * said because of a finding is said with its numbers.
 */
export const dayOfFinding = (
  ids: readonly string[],
  context: ComposeContext,
): ComposeContext | undefined => {
  const by = held(context).find(({ rule }) => ids.includes(rule.id))?.by
  return by?.dates === undefined ? undefined : by.context
}

/** Findings that hold on race days that are alike. */
export function foundOn(group: DayGroup): ReadonlySet<string> {
  const input = inputOf(group)
  return new Set(findingRules.filter(({ holds }) => holds(input)).map(({ id }) => id))
}

/** Lines of the facility file that say what a rule looked at, such as `facility.yaml:31`. */
const placesOf = ({ facts = [] }: FindingRule, { engine }: ComposeContext): readonly string[] => [
  ...new Set(
    facts.flatMap((path) => {
      const provenance = engine.facts.get(path)?.provenance
      return provenance && 'at' in provenance ? [`${provenance.at.file}:${provenance.at.line}`] : []
    }),
  ),
]

/** Whether the facility file says anything at a path with dots. */
const isSaid = (entry: string, { facility }: ComposeContext): boolean =>
  entry
    .split('.')
    .reduce<unknown>(
      (at, key) => (at as Readonly<Record<string, unknown>> | undefined)?.[key],
      facility.file,
    ) !== undefined

/**
 * The findings that hold here or on one of the race days, worst first, with the lines of the facility file that they come
 * from.
 */
export function composeFindings(context: ComposeContext): readonly Finding[] {
  const texts = new Map(itemsOf(context.library.findings).map((t) => [t.id, t]))
  const guessesOf = new Map<Case, ReturnType<typeof guessesBehind>>()
  const guessesIn = (by: Case) => {
    const known =
      guessesOf.get(by) ?? guessesBehind(by.context.engine, context.library.words.capabilities)
    guessesOf.set(by, known)
    return known
  }
  const wordsOf = ({ id }: FindingRule): FindingText => {
    const text = texts.get(id)
    if (!text) throw new RangeError(`a checked library has no words for ${id}`)
    return text
  }
  return held(context)
    .map(({ rule, by }): Finding => {
      const { dates, context: day } = by
      const { text, ask, role, ...words } = wordsOf(rule)
      return {
        ...words,
        // Of a day that is not the fullest its own numbers are said, with its date.
        text: dates === undefined ? text : `${dates}: ${filled(text, day)}`,
        figures: (rule.figures ?? []).filter((f) => day.engine.figure(f)?.value.ok),
        guesses: guessesIn(by)([...namesIn(text), ...(rule.figures ?? [])]),
        ask: { entry: ask, role, isSaid: role === undefined && isSaid(ask, context) },
        where: placesOf(rule, day),
      }
    })
    .sort((a, b) => rank[a.severity] - rank[b.severity])
}
